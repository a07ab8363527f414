package spoonfall.food;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Something that goes into the pan.
 *
 * @param name what it is called, in lower case
 * @param others what it is called as well
 * @param kind what it is to a preserve
 * @param setting whether it sets by itself
 * @param cupG grams in a US cup; empty if nobody weighed one
 * @param cup how the cup is filled, such as "sections"; may be empty
 * @param pieceG grams of one that is ready for the pan; empty if it does not come in pieces
 * @param piece what one is, such as "medium, peeled"; may be empty
 * @param waterPercent water, as percent of its mass
 * @param solubles what dissolves
 * @param source where the numbers come from
 */
public record Food(
        String name,
        List<String> others,
        FoodKind kind,
        SettingClass setting,
        OptionalDouble cupG,
        String cup,
        OptionalDouble pieceG,
        String piece,
        double waterPercent,
        Solubles solubles,
        String source) {
    private static final int LONGEST_NAME = 60;

    /** A cup of anything edible weighs less: honey, the heaviest, 339 g. */
    private static final double HEAVIEST_CUP_G = 400;

    private static final double HEAVIEST_PIECE_G = 5_000;

    /** Refuses what no food can be. */
    public Food {
        others = List.copyOf(others);
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a food needs a name of 1 to " + LONGEST_NAME + " letters");
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException(name + ": say where its numbers come from (source)");
        }
        within(name, "a cup in grams", cupG, 10, HEAVIEST_CUP_G);
        within(name, "a piece in grams", pieceG, 0.1, HEAVIEST_PIECE_G);
        if (!(waterPercent >= 0 && waterPercent <= 100)) {
            throw new IllegalArgumentException(name + ": water must be 0 to 100 %, not " + waterPercent);
        }
        if (waterPercent + solubles.middle() > 100 + 1e-9) {
            throw new IllegalArgumentException(
                    name + ": water and soluble solids are more than the whole; they must be 100 % at most");
        }
    }

    private static void within(String name, String what, OptionalDouble value, double low, double high) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s: %s must be %s to %s, not %s", name, what, low, high, value.getAsDouble()));
        }
    }

    /** What neither is water nor dissolves, as percent of its mass. */
    public double rest() {
        return Math.max(0, 100 - waterPercent - solubles.middle());
    }
}
