package spoonfall.log.store.upkeep;

import java.time.Instant;

/**
 * What went from the record, and why.
 *
 * @param at when
 * @param cook which cook, by its number in the list
 * @param startedAt when it had begun
 * @param batch what was made; may be empty
 * @param readings how many readings went
 * @param whole whether all of the cook went
 * @param why whose word it was, such as {@code keep = "2 years"}
 */
public record UpkeepLine(
        Instant at, long cook, Instant startedAt, String batch, long readings, boolean whole, String why) {}
