package spoonfall.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoonfall.food.Amount;

/**
 * A batch made larger or smaller, and what does not grow with it.
 *
 * @param factor so many times as large
 * @param once the batch as it was
 * @param scaled the batch as it is to be
 * @param notes what does not scale, for the cook
 */
public record Scaling(double factor, BatchPlan once, BatchPlan scaled, List<String> notes) {
    /**
     * How many times as large, as somebody typed it, such as {@code 2}, {@code 2x} or {@code 1/2}.
     *
     * @throws IllegalArgumentException in one line that gives good ones
     */
    public static double times(String text) {
        String bare = text.strip();
        try {
            return Amount.of(bare.endsWith("x") ? bare.substring(0, bare.length() - 1) : bare, "")
                    .number();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" times as large is not understood; write it like 2, 1.5 or 1/2", e);
        }
    }

    /** Scales a batch. */
    public static Scaling of(BatchPlan once, double factor) {
        BatchPlan scaled = once.times(factor);
        List<String> notes = new ArrayList<>();
        once.boilMinutes()
                .ifPresent(before -> scaled.boilMinutes()
                        .ifPresent(after -> notes.add(String.format(
                                Locale.ROOT,
                                "The hob does not grow: it drives off the same water a minute, so the boil takes about %.0f instead of %.0f minutes.",
                                after.middle(),
                                before.middle()))));
        notes.add(String.format(
                Locale.ROOT,
                "The pan does not grow either: this wants %.1f L instead of %.1f L.",
                scaled.panL(),
                once.panL()));
        notes.add(
                "Water leaves through the surface and by the hob's heat, not by the kilogram: never take a recipe's boiling time for another size.");
        if (factor > 1) {
            notes.add(
                    "Published guidance is to make one batch at a time; longer boiling breaks pectin down (USDA, Agriculture Information Bulletin 539).");
        }
        notes.add("The temperature at which it sets, the processing time and the set test stay as they are.");
        return new Scaling(factor, once, scaled, List.copyOf(notes));
    }
}
