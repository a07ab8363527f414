package spoonfall.log.store.book;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import spoonfall.book.Made;
import spoonfall.book.Outcome;

/**
 * A cook in the list of the batch book.
 *
 * @param id where it is kept
 * @param startedAt the wall clock at its first reading
 * @param pan which pan; may be empty
 * @param batch what it was called; may be empty
 * @param made what was made, as far as somebody said
 * @param riseC the rise that was wanted, in °C; empty while it goes on
 * @param finalRiseC the highest rise that lasted, in °C; empty while it goes on, or if it never boiled
 * @param boilMinutes how long it boiled hard; empty likewise
 * @param lastedMillis milliseconds of the cook up to which it was watched
 * @param ended whether it is over
 * @param outcomes how it came out, as far as somebody said, the day before the month
 * @param notes how many notes were written
 * @param photos how many photos are kept
 */
public record BookLine(
        long id,
        Instant startedAt,
        String pan,
        String batch,
        Made made,
        OptionalDouble riseC,
        OptionalDouble finalRiseC,
        OptionalDouble boilMinutes,
        long lastedMillis,
        boolean ended,
        List<Outcome> outcomes,
        int notes,
        int photos) {
    /** Keeps a copy of the list. */
    public BookLine {
        outcomes = List.copyOf(outcomes);
    }
}
