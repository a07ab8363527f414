package spoonfall.canning;

import java.util.OptionalDouble;

/**
 * The processing time of a tested recipe.
 *
 * @param minutes the time as the recipe gives it, in minutes, 1 to {@link #MOST_MINUTES}
 * @param forElevationM the elevation that the recipe gives it for, in metres; empty when it does not say
 */
public record RecipeTime(double minutes, OptionalDouble forElevationM) {
    /** No jam is processed for longer; more is a slip of the pen. */
    public static final double MOST_MINUTES = 120;

    /** Validates the minutes. */
    public RecipeTime {
        if (!(minutes >= 1 && minutes <= MOST_MINUTES)) {
            throw new IllegalArgumentException(
                    "a recipe's processing time must be 1 to 120 minutes, such as 10min, not " + minutes);
        }
    }
}
