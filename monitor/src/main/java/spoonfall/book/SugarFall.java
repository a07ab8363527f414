package spoonfall.book;

import java.util.OptionalDouble;

/** When the sugar went into a pan, which no probe tells: cold sugar takes several degrees from it within a minute or two. */
public final class SugarFall {
    /** Cold sugar takes that much from a simmering pan (common practice, no source); a stir takes a degree or two. */
    private static final double FALL_C = 5;

    private static final double WITHIN_S = 120;

    /** A level is the middle of the readings for so long to either side. */
    private static final double SETTLED_S = 20;

    /** Sugar goes in before the pan is at that share of its target. */
    private static final double SUGAR_BY = 0.4;

    private static final double STEP_S = 5;

    private SugarFall() {}

    /**
     * The second at which the last such fall began, before the pan came near its target, for without sugar none does; 0 if there
     * was none. Peel that boiled before that does not count.
     *
     * @param untilS the latest second that is looked at
     * @param targetRiseC the rise that was wanted, in °C
     */
    public static double lastS(RiseLine line, double untilS, double targetRiseC) {
        double foundS = 0;
        double highC = Double.NEGATIVE_INFINITY;
        double highS = 0;
        for (double t = 0; t <= untilS; t += STEP_S) {
            OptionalDouble level = line.middle(t - SETTLED_S, t + SETTLED_S);
            if (level.isEmpty()) {
                continue;
            }
            double now = level.getAsDouble();
            if (now >= SUGAR_BY * targetRiseC) {
                break;
            }
            boolean fell = now < highC && t - highS <= WITHIN_S;
            if (fell && highC - now < FALL_C) {
                continue;
            }
            foundS = fell ? highS : foundS;
            highC = now;
            highS = t;
        }
        return foundS;
    }
}
