package spoonfall.cook;

import java.util.Locale;

/** Where a cook is. */
public enum Stage {
    /** No reading yet. */
    WAITING,
    /** Well below the boil. */
    WARMING,
    /** Steady just below the boil, as when peel softens. */
    SIMMERING,
    /** Climbing towards the boil. */
    COMING_TO_THE_BOIL,
    /** Boiling, the set still far. */
    ROLLING_BOIL,
    /** Near enough to the gel point that set tests are worth doing. */
    TEST_WINDOW,
    /** At the gel point. */
    AT_GEL_POINT,
    /** Past the gel point: every minute costs. */
    PAST_GEL_POINT,
    /** It boiled, and is cooling. */
    OFF_THE_HEAT;

    /** Whether the pan is boiling. */
    public boolean boiling() {
        return this == ROLLING_BOIL || this == TEST_WINDOW || atOrPastGelPoint();
    }

    /** Whether the pan boils at the gel point or beyond. */
    public boolean atOrPastGelPoint() {
        return this == AT_GEL_POINT || this == PAST_GEL_POINT;
    }

    /** What a cook is told of a stage of that name on the wire, such as {@code at the setting point}. */
    public static String words(String wireName) {
        return switch (wireName) {
            case "test-window" -> "close to setting";
            case "at-gel-point" -> "at the setting point";
            case "past-gel-point" -> "past the setting point";
            default -> wireName.replace('-', ' ');
        };
    }

    /** The name on the wire, such as {@code rolling-boil}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
