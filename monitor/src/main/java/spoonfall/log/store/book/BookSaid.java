package spoonfall.log.store.book;

import java.util.List;
import spoonfall.book.Made;
import spoonfall.book.Outcome;

/**
 * What somebody said of a batch.
 *
 * @param made what was made
 * @param outcomes how it came out, the day before the month
 */
public record BookSaid(Made made, List<Outcome> outcomes) {
    /** Keeps a copy of the list. */
    public BookSaid {
        outcomes = List.copyOf(outcomes);
    }
}
