package spoonfall.learn;

import java.util.Locale;
import spoonfall.book.After;
import spoonfall.book.Firmness;

/**
 * A finished batch and how it set.
 *
 * @param id where the record keeps it; a later batch has a larger one
 * @param fruit what it was made of, by a short name; two that differ in case and spaces only are the same
 * @param finalRiseC how far above the water boil it was boiled, in °C; above 0, 20 at most
 * @param set how it had set
 * @param after how long after cooking that was seen
 */
public record Batch(long id, String fruit, double finalRiseC, Firmness set, After after) {
    /** No batch is boiled further than that many °C above the water boil. */
    public static final double MOST_RISE_C = 20;

    private static final int LONGEST_FRUIT = 60;

    /** Validates the fruit and the rise. */
    public Batch {
        fruit = tidied(fruit);
        if (fruit.isEmpty() || fruit.length() > LONGEST_FRUIT) {
            throw new IllegalArgumentException(
                    "name the fruit of batch " + id + " in 1 to " + LONGEST_FRUIT + " letters, such as orange");
        }
        if (!(finalRiseC > 0 && finalRiseC <= MOST_RISE_C)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a batch is boiled to 0 to 20 °C above boiling water, not %.1f °C (batch %d)",
                    finalRiseC,
                    id));
        }
    }

    /** A batch that was looked at after a day. */
    public Batch(long id, String fruit, double finalRiseC, Firmness set) {
        this(id, fruit, finalRiseC, set, After.DAY);
    }

    /** Whether it was made of that fruit. */
    public boolean isOf(String other) {
        return key(fruit).equals(key(other));
    }

    /** A fruit as it is shown: as somebody wrote it, but for its spaces. */
    static String tidied(String fruit) {
        return fruit.strip().replaceAll("\\s+", " ");
    }

    /** What two ways of writing one fruit have in common. */
    static String key(String fruit) {
        return tidied(fruit).toLowerCase(Locale.ROOT);
    }
}
