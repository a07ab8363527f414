package spoonfall.estimate;

import java.util.Optional;
import java.util.function.DoublePredicate;
import spoonfall.estimate.filter.Arrival;

/** Shows a steady pan to an estimator, tenth of a second by tenth, as a monitor would. */
public final class Follower {
    public static final double GEL_RISE_C = 8 / 1.8;
    private static final double SETTLED_S = 15;
    private static final double DIP_C = 0.5;

    public final SteadyPan pan;
    public final PanEstimator estimator = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, false);
    private final int everyTenths;
    private int tenths;

    public Follower(SteadyPan pan, double periodS) {
        this.pan = pan;
        everyTenths = (int) Math.round(10 * periodS);
    }

    public double t() {
        return tenths / 10.0;
    }

    /** Goes on for so long. */
    public Follower forS(double seconds) {
        return forS(seconds, t -> true, t -> false);
    }

    /** Goes on for so long, with readings and stirs at those times only. */
    public Follower forS(double seconds, DoublePredicate reads, DoublePredicate stirred) {
        double untilT = t() + seconds;
        while (t() < untilT - 0.05) {
            tenths++;
            pan.step();
            if (tenths % everyTenths == 0) {
                double riseC = pan.shownC(stirred.test(t()) ? DIP_C : 0);
                if (reads.test(t())) {
                    estimator.accept(t(), riseC);
                }
            }
            if (tenths % 10 == 0) {
                estimator.endSecond(t(), true, t() >= SETTLED_S, false, 0.01);
            }
        }
        return this;
    }

    /** The pan boils no more: what was known of it is forgotten. */
    public void leave() {
        estimator.endSecond(t(), false, false, false, 0.01);
    }

    public Optional<Arrival> arrival() {
        return estimator.arrival(t(), GEL_RISE_C);
    }

    double trulyS() {
        return pan.trulyS(GEL_RISE_C);
    }

    /** By which part of the true time the forecast is off; positive when it is late. */
    public double error() {
        return arrival().orElseThrow().s() / trulyS() - 1;
    }
}
