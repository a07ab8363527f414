package spoonfall.canning;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Jars that are to be processed, as far as the published time depends on it.
 *
 * @param food what is in them, filled while it is boiling hot
 * @param elevationM height of the kitchen above sea level, in metres
 * @param jar how large they are
 * @param sterilised whether the empty jars were boiled before they were filled
 * @param canner what they are processed in
 * @param recipe the tested recipe's own time
 * @param headspaceMm from the preserve to the rim, in millimetres; empty when nobody said
 * @param acidity the pH of the preserve; empty when it is not known
 * @param testedForBoilingWater whether the recipe was tested for a boiling-water canner; matters for steam
 */
public record JarBatch(
        Food food,
        double elevationM,
        JarSize jar,
        boolean sterilised,
        CannerKind canner,
        Optional<RecipeTime> recipe,
        OptionalDouble headspaceMm,
        OptionalDouble acidity,
        boolean testedForBoilingWater) {

    /** Validates the pH and the headspace. */
    public JarBatch {
        if (!Double.isFinite(elevationM)) {
            throw new IllegalArgumentException("an elevation must be a number of metres, not " + elevationM);
        }
        acidity.ifPresent(ph -> within("a pH", ph, 0, 14, ", such as 3.2"));
        headspaceMm.ifPresent(mm -> within("a headspace", mm, 0, 200, " mm, such as 1/4in or 6mm"));
    }

    private static void within(String what, double value, double least, double most, String example) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be %.0f to %.0f%s, not %s", what, least, most, example, value));
        }
    }
}
