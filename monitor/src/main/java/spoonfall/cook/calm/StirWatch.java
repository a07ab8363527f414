package spoonfall.cook.calm;

import spoonfall.cook.signal.Signals;

/**
 * Sees stirs as short dips of the reading: the cooler top is stirred down to the probe. A thermometer that is too coarse
 * or too noisy does not show them. The numbers are common practice, no source.
 */
final class StirWatch {
    private static final double LEAST_DIP_C = 0.15;
    private static final double SIGMAS = 4;
    private static final double LONGEST_DIP_S = 40;
    private static final double NOISE_OVER_S = 120;

    /** A stir of a usual size must stand out, or stirs cannot be seen. */
    private static final double USUAL_DIP_C = 0.3;

    private static final double COARSE_STEP_C = 0.15;

    private double noiseC = 0.02;
    private double dippedT = Double.NaN;
    private double stirredT = Double.NEGATIVE_INFINITY;

    /** When the last stir was seen; long ago if none was. */
    double stirredT() {
        return stirredT;
    }

    /** Whether this thermometer would show a stir. */
    boolean sees(Signals now) {
        return now.stepC() <= COARSE_STEP_C && dipC() <= USUAL_DIP_C;
    }

    /** Forgets the way here. */
    void restart() {
        dippedT = Double.NaN;
    }

    /** Takes note of a second. */
    void endSecond(Signals now) {
        double below = now.trendC() - now.levelC();
        if (below > dipC()) {
            dippedT = Double.isNaN(dippedT) ? now.t() : dippedT;
            return;
        }
        double typicalC = Math.min(Math.abs(below), dipC()) * 1.25; // a mean deviation as a standard one
        noiseC += (typicalC - noiseC) / NOISE_OVER_S;
        if (below < dipC() / 2 && !Double.isNaN(dippedT)) {
            stirredT = now.t() - dippedT <= LONGEST_DIP_S ? now.t() : stirredT;
            dippedT = Double.NaN;
        }
    }

    private double dipC() {
        return Math.max(LEAST_DIP_C, SIGMAS * noiseC);
    }
}
