package spoonfall.book;

import java.util.OptionalInt;

/**
 * What was made.
 *
 * @param fruit its short name, by which batches are compared, such as {@code Seville orange}; may be empty
 * @param jars how many were filled; empty if nobody said
 */
public record Made(String fruit, OptionalInt jars) {
    /** As many characters fit into a fruit. */
    public static final int LONGEST_FRUIT = 40;

    /** As many jars fit into a batch. */
    public static final int MOST_JARS = 999;

    /** Nobody said anything. */
    public static final Made UNKNOWN = new Made("", OptionalInt.empty());

    /** Validates both. */
    public Made {
        fruit = Wording.checked("a fruit", fruit, LONGEST_FRUIT);
        if (jars.isPresent() && (jars.getAsInt() < 0 || jars.getAsInt() > MOST_JARS)) {
            throw new IllegalArgumentException("a batch fills 0 to " + MOST_JARS + " jars, not " + jars.getAsInt());
        }
    }
}
