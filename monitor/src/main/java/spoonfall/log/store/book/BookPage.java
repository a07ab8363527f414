package spoonfall.log.store.book;

import java.util.List;
import java.util.Optional;
import spoonfall.book.CookMarks;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.cook.StoredCook;

/**
 * A cook as the batch book shows it.
 *
 * @param cook what the record holds of it
 * @param settings what it was last measured against
 * @param line its climb
 * @param marks the moments by which it is compared
 * @param made what was made, as far as somebody said
 * @param outcomes how it came out, as far as somebody said
 * @param photos its photos
 */
public record BookPage(
        StoredCook cook,
        CookSettings settings,
        RiseLine line,
        CookMarks marks,
        Made made,
        List<Outcome> outcomes,
        List<BookPhoto> photos) {
    /** Keeps copies of the lists. */
    public BookPage {
        outcomes = List.copyOf(outcomes);
        photos = List.copyOf(photos);
    }

    /** What happened, in words and in order. */
    public List<BookEvent> events() {
        return BookEvent.of(cook);
    }

    /** What was planned of it; empty if nothing was. */
    public Optional<PlannedBatch> plan() {
        return PlannedBatch.last(cook.inputs());
    }

    /** Its set tests, in order. */
    public List<BookTest> tests() {
        return BookTest.of(cook, line);
    }
}
