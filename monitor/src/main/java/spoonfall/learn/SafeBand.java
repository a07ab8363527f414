package spoonfall.learn;

/**
 * The rises within which a target may be proposed: those at which a syrup is 60 to 70 % solids, the range in which a
 * preserve without added pectin sets and keeps (So Easy to Preserve; the syrup's curve of docs/science.md, a fifth to half of
 * the sugar inverted).
 */
public final class SafeBand {
    /** No target is proposed below that many °C (6 °F) above the water boil: it would keep badly. */
    public static final double LEAST_RISE_C = 3.3;

    /** No target is proposed above that many °C (11 °F) above the water boil: it scorches and turns bitter. */
    public static final double MOST_RISE_C = 6.1;

    private SafeBand() {}

    /** The nearest rise within it. */
    public static double within(double riseC) {
        return Math.max(LEAST_RISE_C, Math.min(MOST_RISE_C, riseC));
    }
}
