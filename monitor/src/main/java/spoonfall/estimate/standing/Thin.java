package spoonfall.estimate.standing;

/**
 * So little above plain water boils a pan that has no sugar in it yet: it hardly climbs, may be turned down to simmer its fruit, and
 * boils degrees higher within a minute or two once the sugar goes in. Common practice, no source.
 */
public final class Thin {
    /** By what is known of its water, in °C. */
    public static final double KNOWN_C = 0.8;

    /** By a height that was read, noise and all, in °C. */
    public static final double READ_C = 1;

    private Thin() {}
}
