package spoonfall.book;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How a batch came out.
 *
 * @param after how long after the cook somebody looked
 * @param set how it had set; empty if nobody said
 * @param taste how it tasted; may be none
 * @param words what else there was to say; may be empty
 */
public record Outcome(After after, Optional<Firmness> set, Set<Taste> taste, String words) {
    /** As many characters fit into the words. */
    public static final int LONGEST_WORDS = 500;

    /** Validates the words and keeps a copy of the tastes, in their order. */
    public Outcome {
        taste = taste.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(taste));
        words = Wording.checked("an outcome", words, LONGEST_WORDS);
    }

    /** Nothing was said yet. */
    public static Outcome unknown(After after) {
        return new Outcome(after, Optional.empty(), Set.of(), "");
    }

    /** Whether nothing is said in it. */
    public boolean empty() {
        return set.isEmpty() && taste.isEmpty() && words.isEmpty();
    }
}
