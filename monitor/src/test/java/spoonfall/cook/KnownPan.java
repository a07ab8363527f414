package spoonfall.cook;

import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.stage.Stages;
import spoonfall.estimate.filter.Ahead;

/** A pan that was watched for a while, of which nothing more is learnt, and what was known of it second by second. */
public final class KnownPan {
    /** For so many seconds it is watched. */
    public static final double UNTIL_S = 900;

    private final double[] dueC = new double[(int) UNTIL_S + 1];
    private final double[] climbPerMinC = new double[dueC.length];
    private final double[] growsPerMin = new double[dueC.length];
    private final double[] noiseC = new double[dueC.length];
    private final MadePan pan;

    private KnownPan(MadePan pan) {
        this.pan = pan;
    }

    /** Watches a pan whose reading is so much off its steady climb; {@code second} is told of every second. */
    public static KnownPan watched(DoubleUnaryOperator offC, Consumer<MadePan> second) {
        KnownPan known = new KnownPan(MadePan.climbing(1.5, offC));
        known.pan.watch(UNTIL_S, now -> {
            known.takeDown((int) now.t());
            second.accept(known.pan);
        });
        return known;
    }

    private void takeDown(int t) {
        Ahead due = pan.forecaster().ahead(2).orElse(new Ahead(0, 0));
        dueC[t] = 100 + due.riseC();
        climbPerMinC[t] = due.climbPerMinC();
        growsPerMin[t] = pan.forecaster().growsPerMin();
        noiseC[t] = pan.forecaster().noiseC();
    }

    /** Where it was due two minutes after {@code t}, by what was known then. */
    public double dueC(int t) {
        return dueC[t];
    }

    /** How fast it was due to climb then. */
    public double climbPerMinC(int t) {
        return climbPerMinC[t];
    }

    /** By what part of itself its climb grew each minute. */
    public double growsPerMin(int t) {
        return growsPerMin[t];
    }

    /** How far its readings were off. */
    public double noiseC(int t) {
        return noiseC[t];
    }

    public Stages stages() {
        return pan.stages();
    }

    public Forecaster forecaster() {
        return pan.forecaster();
    }

    /** Its height by what is known of it. */
    public double panC(double t) {
        return forecaster().panC(t, Double.NaN);
    }
}
