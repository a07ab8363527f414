package spoonfall.typed;

import java.util.OptionalDouble;

/**
 * What is known of the pan when something is typed.
 *
 * @param waterBoilC where water boils here, in °C
 * @param lastC what was typed last, in °C; empty if nothing was
 * @param sinceS how many seconds ago that was
 */
public record Known(double waterBoilC, OptionalDouble lastC, double sinceS) {
    /** What was typed longer ago says nothing of where the pan can be now. */
    private static final double FORGETS_S = 1800;

    private static final double COLDEST_C = -5;
    private static final double HOTTEST_RISE_C = 20;
    private static final double NEAR_BOIL_C = 1;

    /** Half a mark at either end, and an eye that slants. */
    private static final double SLACK_C = 2.5;

    private static final double BOILING_PER_MIN_C = 1.5;
    private static final double WARMING_PER_MIN_C = 15;

    /** So far above the water boil a thin pan gets as soon as it boils. */
    private static final double BOILS_AT_RISE_C = 3;

    private static final double COLD_WATER_C = 8;
    private static final double COOLING_PER_MIN_C = 15;

    /** Whether a preserve can be that hot, and have got there since. The limits are common practice, no source. */
    boolean allows(double temperatureC) {
        if (temperatureC < COLDEST_C || temperatureC > waterBoilC + HOTTEST_RISE_C) {
            return false;
        }
        if (lastC.isEmpty() || sinceS > FORGETS_S) {
            return true;
        }
        double minutes = Math.max(0, sinceS) / 60;
        double fromC = lastC.getAsDouble();
        double boilingC = Math.max(fromC, waterBoilC + BOILS_AT_RISE_C) + SLACK_C + BOILING_PER_MIN_C * minutes;
        boolean boils = fromC >= waterBoilC - NEAR_BOIL_C;
        double highC = boils ? fromC + SLACK_C + BOILING_PER_MIN_C * minutes : boilingC;
        double warmedC = boils ? highC : fromC + SLACK_C + WARMING_PER_MIN_C * minutes;
        double lowC = fromC - COLD_WATER_C - COOLING_PER_MIN_C * minutes;
        return temperatureC >= lowC && temperatureC <= Math.min(highC, warmedC);
    }
}
