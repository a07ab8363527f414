package spoonfall.physics;

/** How far above boiling water a preserve without added pectin sets. */
public final class GelPoint {
    /**
     * The usual rise, 8 °F, in °C (National Center for Home Food Preservation, "Testing Jelly Without Added
     * Pectin").
     */
    public static final double DEFAULT_RISE_C = 8 / 1.8;

    /** Set tests begin 2 °F, here in °C, below the gel point (common practice, no source). */
    public static final double WINDOW_C = 2 / 1.8;

    private GelPoint() {}
}
