package spoonfall.cook;

import java.util.Locale;
import spoonfall.physics.GelPoint;

/**
 * What one cook is measured against.
 *
 * @param waterBoil the temperature at which water boils here, now
 * @param riseC how far above it the preserve sets, in °C; 1 to 15
 * @param windowC from how far below that set tests are worth doing, in °C; above 0
 */
public record CookSettings(WaterBoil waterBoil, double riseC, double windowC) {
    /** Smallest rise that makes sense: below it nothing sets. */
    public static final double LEAST_RISE_C = 1;

    /** Largest rise that makes sense: beyond it the pan holds sweets, not preserve. */
    public static final double MOST_RISE_C = 15;

    /** Validates the rise and the window. */
    public CookSettings {
        if (!(riseC >= LEAST_RISE_C && riseC <= MOST_RISE_C)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "the rise above boiling water must be 1 to 15 °C (2 to 27 °F), not %.1f °C", riseC));
        }
        if (!(windowC > 0 && windowC <= MOST_RISE_C)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "set tests cannot begin %.1f °C below the set", windowC));
        }
    }

    /** With set tests from the usual 2 °F below the set. */
    public CookSettings(WaterBoil waterBoil, double riseC) {
        this(waterBoil, riseC, GelPoint.WINDOW_C);
    }

    /**
     * The same kitchen, by what set tests taught.
     *
     * @param learntC the rise in °C at which to test next; what lies outside of what makes sense is brought within
     * @param aheadC how far below that to call, in °C
     */
    public CookSettings aimedAt(double learntC, double aheadC) {
        return new CookSettings(waterBoil, Math.min(MOST_RISE_C, Math.max(LEAST_RISE_C, learntC)), aheadC);
    }

    /** Sea level and the usual 8 °F. */
    public static CookSettings defaults() {
        return new CookSettings(WaterBoil.standard(), GelPoint.DEFAULT_RISE_C);
    }

    /** The temperature in °C at which this preserve sets. */
    public double gelPointC() {
        return waterBoil.temperatureC() + riseC;
    }

    /** The temperature in °C from which set tests are worth doing. */
    public double windowFromC() {
        return gelPointC() - windowC;
    }
}
