package spoonfall.cook.pan;

import java.util.OptionalDouble;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.signal.Signals;

/**
 * A reading that has jumped down from where the pan was and goes on there, as of a tip that moved: the pan boils on where it was,
 * and nobody reads it. What cools goes lower, and what something cold went into warms again: neither goes on where it fell to at the
 * pan's own pace. One that had jumped up before is only back. Hot water or juice that goes in
 * looks the same, which the words of the call say. The numbers are judgements, no source.
 */
final class Shifted {
    /** Only what has gone on there for so long is no pan that warms again. */
    private static final double LEAST_S = 15;

    private static final double STRAYS_C = 0.4;
    private static final double STRAYS_NOISES = 4;

    /** What falls deeper was cooled by something that went in: a tip that moves stays near the pan. */
    private static final double DEEPEST_C = 6;

    /** Heat and curve may be others than is known. */
    private static final double TIMES = 2;

    private boolean lifted;
    private boolean shifted;
    private double sinceT;
    private double seenT;
    private double toC;
    private double perMinC;

    /** Forgets it: the readings begin anew. */
    void restart() {
        lifted = false;
        shifted = false;
    }

    /** The reading is seen to have jumped, {@code agreesC} being how far what agrees with what is known may be off. */
    void jumped(Jumped.Shift shift, double t, double agreesC, Forecaster forecaster) {
        boolean fromThePan = Math.abs(shift.fromC() - forecaster.panC(t, Double.POSITIVE_INFINITY)) < agreesC;
        boolean up = shift.toC() > shift.fromC();
        boolean deep = shift.fromC() - shift.toC() > DEEPEST_C;
        if (up || deep || shifted || lifted || !fromThePan) {
            lifted = up && fromThePan && !shifted;
            shifted = false;
            return;
        }
        shifted = true;
        seenT = t;
        sinceT = t - shift.agoS();
        toC = shift.toC();
        perMinC = forecaster.climbPerMinC();
    }

    /** Ends a second; {@code noiseC} is how far readings of some seconds are usually off. */
    void endSecond(Signals now, double noiseC) {
        double strayC = Math.max(STRAYS_C, STRAYS_NOISES * noiseC) + now.knownStepC();
        double climbC = perMinC * (now.t() - seenT) / 60;
        double offC = now.levelC() - toC;
        shifted &= offC > -strayC && offC < TIMES * climbC + strayC;
    }

    /** Since when the pan is not read; empty where it is. */
    OptionalDouble sinceT(double t) {
        return shifted && t - seenT >= LEAST_S ? OptionalDouble.of(sinceT) : OptionalDouble.empty();
    }
}
