package spoonfall.estimate.burner;

import java.util.Arrays;

/**
 * Sees a pan that goes off the boil and back again and again, as over a burner that switches on and off. Only its heights
 * are where the syrup boils: what lies below them is the pan's cooling, and tells nothing of the water.
 *
 * <p>Such points are lopsided (many near the top, a tail below), move smoothly from one to the next, and come back at least
 * three times in four minutes. Noise is none of the first two, and stirs are too seldom for the third.
 */
final class Sawtooth {
    private static final int KEPT = 48;
    private static final double OVER_S = 240;
    private static final double LONGEST_DIP_S = 60;
    private static final int LEAST_POINTS = 12;
    private static final int LEAST_RETURNS = 3;

    /** Between the 90 and 75 % quantiles lie so many standard deviations of what is normally distributed. */
    private static final double UPPER_SIGMAS = 0.607;

    private static final double LEAST_SIGMA_C = 0.025;
    private static final double LOPSIDED_SIGMAS = 4.5;
    private static final double DIP_SIGMAS = 2;
    private static final double LEAST_DEPTH_C = 0.2;
    private static final double DEEP_PART = 0.4;

    /** Von Neumann's ratio of the steps between neighbours to the variance of all, halved: 1 for noise. */
    private static final double SMOOTH = 0.4;

    private final double[] times = new double[KEPT];
    private final double[] heights = new double[KEPT];
    private final double[] levels = new double[KEPT];
    private final double[] sorted = new double[KEPT];
    private int taken;
    private double topT = Double.NaN;
    private double bottomC;
    private double depthC;
    private double seenT = Double.NEGATIVE_INFINITY;
    private boolean seen;

    /** Forgets the way here. */
    void forget() {
        taken = 0;
        seenT = Double.NEGATIVE_INFINITY;
        seen = false;
    }

    /** Takes a point; {@code climbPerMinC} is how fast the pan should be climbing. */
    void point(double t, double riseC, double climbPerMinC) {
        times[taken % KEPT] = t;
        heights[taken % KEPT] = riseC;
        taken++;
        int count = level(t, climbPerMinC);
        if (count < LEAST_POINTS) {
            seen = false;
            return;
        }
        boolean smooth = smooth(count);
        seen = t - seenT < OVER_S;
        if (!smooth && !seen) {
            return; // as nearly always: what follows takes far longer
        }
        System.arraycopy(levels, 0, sorted, 0, count);
        Arrays.sort(sorted, 0, count);
        double highC = quantile(0.9, count);
        double upperC = quantile(0.75, count);
        double lowC = quantile(0.1, count);
        double sigmaC = Math.max((highC - upperC) / UPPER_SIGMAS, LEAST_SIGMA_C);
        depthC = highC - lowC;
        bottomC = upperC - DIP_SIGMAS * sigmaC;
        boolean lopsided = upperC - lowC > Math.max(LEAST_DEPTH_C, LOPSIDED_SIGMAS * sigmaC);
        int returns = returns(count, Math.min(bottomC, upperC - DEEP_PART * depthC), upperC - sigmaC);
        if (lopsided && returns >= LEAST_RETURNS && smooth) {
            seenT = t;
        }
        seen = t - seenT < OVER_S;
    }

    /** Whether the latest point lies in a dip that will be over soon. */
    boolean dips() {
        int last = (taken - 1) % KEPT;
        return seen && heights[last] < bottomC && times[last] - topT < LONGEST_DIP_S;
    }

    /** How deep it goes, in °C; 0 where it does not. */
    double depthC() {
        return seen ? depthC : 0;
    }

    /** Puts the points of the last minutes where they would be at {@code t}, oldest first, and says how many there are. */
    private int level(double t, double climbPerMinC) {
        int count = 0;
        double climbPerS = climbPerMinC / 60;
        int at = taken <= KEPT ? 0 : taken % KEPT;
        for (int i = Math.max(0, taken - KEPT); i < taken; i++) {
            double agoS = t - times[at];
            levels[count] = heights[at] + climbPerS * agoS;
            count += agoS <= OVER_S ? 1 : 0;
            at = at + 1 == KEPT ? 0 : at + 1;
        }
        return count;
    }

    private double quantile(double part, int count) {
        return sorted[(int) (part * (count - 1))];
    }

    private int returns(int count, double dipC, double backC) {
        int returns = 0;
        boolean down = false;
        topT = Double.NaN;
        for (int i = 0; i < count; i++) {
            if (levels[i] < dipC) {
                down = true;
            } else if (levels[i] > backC) {
                returns += down ? 1 : 0;
                down = false;
                topT = times[(taken - count + i) % KEPT];
            }
        }
        return returns;
    }

    private boolean smooth(int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += levels[i];
        }
        double mean = sum / count;
        double squares = 0;
        double steps = 0;
        for (int i = 0; i < count; i++) {
            squares += (levels[i] - mean) * (levels[i] - mean);
            double step = i == 0 ? 0 : levels[i] - levels[i - 1];
            steps += step * step;
        }
        return steps < 2 * SMOOTH * squares;
    }
}
