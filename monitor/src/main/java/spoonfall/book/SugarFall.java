package spoonfall.book;

import java.util.OptionalDouble;

/** When the sugar went into a pan, which no probe tells: cold sugar takes several degrees from it within a minute or two. */
public final class SugarFall {
    /** Cold sugar takes that much from a simmering pan (common practice, no source); a stir takes a degree or two. */
    private static final double FALL_C = 5;

    private static final double WITHIN_S = 120;
    private static final double STEP_S = 5;

    private SugarFall() {}

    /**
     * The second at which the last such fall began; 0 if there was none.
     *
     * @param settledS a level is the middle of the readings for so long to either side
     * @param untilS the latest second that is looked at
     * @param belowC what comes after a level of that rise is not looked at, in °C above the water boil
     */
    public static double lastS(RiseLine line, double settledS, double untilS, double belowC) {
        double foundS = 0;
        double highC = Double.NEGATIVE_INFINITY;
        double highS = 0;
        for (double t = 0; t <= untilS; t += STEP_S) {
            OptionalDouble level = line.middle(t - settledS, t + settledS);
            if (level.isEmpty()) {
                continue;
            }
            double now = level.getAsDouble();
            if (now >= belowC) {
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
