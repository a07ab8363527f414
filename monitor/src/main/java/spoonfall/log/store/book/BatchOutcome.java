package spoonfall.log.store.book;

import java.time.Instant;
import java.util.OptionalDouble;
import spoonfall.book.Outcome;

/**
 * What a batch came to and how it came out, to learn from.
 *
 * @param id where the cook is kept
 * @param startedAt the wall clock at its first reading
 * @param fruit what was made; empty if nobody said
 * @param finalRiseC the highest rise that lasted until the heat went off, in °C; empty if it never boiled
 * @param waterBoilC where water boiled, in °C
 * @param boilMinutes how long it boiled hard; empty if it never did
 * @param outcome how it came out, and after which time
 */
public record BatchOutcome(
        long id,
        Instant startedAt,
        String fruit,
        OptionalDouble finalRiseC,
        double waterBoilC,
        OptionalDouble boilMinutes,
        Outcome outcome) {}
