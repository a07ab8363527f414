package spoonfall.series;

/** A climb that grows by the same part of itself each minute, as syrup's curve makes it. */
public final class Steepening {
    /** With less it is a straight line, where the formula would divide by nothing. */
    private static final double LEAST_GROWN = 1e-3;

    private Steepening() {}

    /** How many times as far it comes as it would have at the pace with which it began; {@code grown} is the part of itself times the minutes. */
    public static double times(double grown) {
        return grown < LEAST_GROWN ? 1 : Math.expm1(grown) / grown;
    }
}
