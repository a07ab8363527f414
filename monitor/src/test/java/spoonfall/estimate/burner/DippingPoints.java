package spoonfall.estimate.burner;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;

/** Points some seconds apart that climb by 0.1 °C a minute, with what is added to each. The depths are judgements. */
public final class DippingPoints {
    static final double CLIMB_PER_MIN_C = 0.1;

    /** Who looks at the points. */
    interface Taker {
        /** Takes one. */
        void point(double t, double riseC, double climbPerMinC);
    }

    private DippingPoints() {}

    /** A burner that is off for the last twenty seconds of every minute. */
    public static double offForTwentySecondsAMinute(double t) {
        double offS = t % 60 - 40;
        double backS = t % 60;
        return offS > 0 ? -0.04 * offS : -0.8 * Math.exp(-backS / 5);
    }

    /** The point of {@code t} to which {@code addedC} is added. */
    static double riseC(double t, double addedC) {
        return 1 + CLIMB_PER_MIN_C * t / 60 + addedC;
    }

    /** Lets {@code taker} see a point every so often, and counts those after which it {@code dips}. */
    static int follow(Taker taker, BooleanSupplier dips, double everyS, double untilT, DoubleUnaryOperator added) {
        int skipped = 0;
        for (double t = 0; t <= untilT; t += everyS) {
            taker.point(t, riseC(t, added.applyAsDouble(t)), CLIMB_PER_MIN_C);
            skipped += dips.getAsBoolean() ? 1 : 0;
        }
        return skipped;
    }
}
