package spoonfall.estimate.filter;

import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.extended.ExtendedKalmanFilter;
import org.hipparchus.filtering.kalman.extended.NonLinearEvolution;
import org.hipparchus.filtering.kalman.extended.NonLinearProcess;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The same pan in Hipparchus' extended Kalman filter. */
final class HipparchusPan implements NonLinearProcess<HipparchusPan.Look> {
    private final Model model;
    private final ExtendedKalmanFilter<Look> filter;
    private ProcessEstimate estimate;

    HipparchusPan(Model model, double t, double[] guesses, double[] doubts) {
        this.model = model;
        double[] variances = new double[doubts.length];
        for (int i = 0; i < doubts.length; i++) {
            variances[i] = doubts[i] * doubts[i];
        }
        estimate =
                new ProcessEstimate(t, new ArrayRealVector(guesses), MatrixUtils.createRealDiagonalMatrix(variances));
        filter = new ExtendedKalmanFilter<>(new CholeskyDecomposer(1e-15, 1e-15), this, estimate);
    }

    /** A reading as Hipparchus wants it; its time is in minutes here as all else is per minute. */
    record Look(double t, double riseC) implements Measurement {
        @Override
        public double getTime() {
            return t;
        }

        @Override
        public RealVector getValue() {
            return new ArrayRealVector(new double[] {riseC});
        }

        @Override
        public RealMatrix getCovariance() {
            return new Array2DRowRealMatrix(new double[][] {{Model.VARIANCE}});
        }
    }

    void accept(double t, double riseC) {
        estimate = filter.estimationStep(new Look(t, riseC));
    }

    double[] state() {
        return estimate.getState().toArray();
    }

    double[][] covariance() {
        return estimate.getCovariance().getData();
    }

    @Override
    public NonLinearEvolution getEvolution(double previousTime, RealVector previous, Look look) {
        double minutes = (look.t() - previousTime) / 60;
        double u = previous.getEntry(0) - previous.getEntry(1) * minutes;
        double grows = minutes * model.growth(minutes, previous.getEntry(0), previous.getEntry(4));
        double scale = previous.getEntry(3) + grows * previous.getEntry(4);
        double[] state = {u, previous.getEntry(1), previous.getEntry(2), scale, previous.getEntry(4)};
        RealMatrix moves = MatrixUtils.createRealIdentityMatrix(PanFilter.SIZE);
        moves.setEntry(0, 1, -minutes);
        moves.setEntry(3, 4, grows);
        double wander = model.slopeWander(previous.getEntry(1));
        RealMatrix noise = new Array2DRowRealMatrix(PanFilter.SIZE, PanFilter.SIZE);
        noise.setEntry(0, 0, wander * minutes * minutes * minutes / 3);
        noise.setEntry(0, 1, -wander * minutes * minutes / 2);
        noise.setEntry(1, 0, -wander * minutes * minutes / 2);
        noise.setEntry(1, 1, wander * minutes);
        noise.setEntry(2, 2, Model.OFFSET_WANDER * minutes);
        noise.setEntry(3, 3, Model.SCALE_WANDER * minutes);
        RealMatrix sight = new Array2DRowRealMatrix(
                new double[][] {{scale * model.curve.riseSlopeC(u), 0, 1, model.curve.riseC(u), 0}});
        return new NonLinearEvolution(look.t(), new ArrayRealVector(state, false), moves, noise, sight);
    }

    @Override
    public RealVector getInnovation(Look look, NonLinearEvolution evolution, RealMatrix innovationCovariance) {
        RealVector state = evolution.getCurrentState();
        double shows = state.getEntry(3) * model.curve.riseC(state.getEntry(0)) + state.getEntry(2);
        return new ArrayRealVector(new double[] {look.riseC() - shows});
    }
}
