package spoonfall.estimate.filter;

/**
 * Where a pan will be if water goes on leaving it as it does.
 *
 * @param riseC how far above the water boil, in °C
 * @param climbPerMinC how fast it will climb there, in °C a minute: syrup's curve steepens
 */
public record Ahead(double riseC, double climbPerMinC) {
    /**
     * Checks them.
     *
     * @throws IllegalArgumentException if one is no number
     */
    public Ahead {
        if (!Double.isFinite(riseC) || !Double.isFinite(climbPerMinC)) {
            throw new IllegalArgumentException("no height and climb: " + riseC + ", " + climbPerMinC);
        }
    }
}
