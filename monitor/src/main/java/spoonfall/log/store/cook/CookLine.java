package spoonfall.log.store.cook;

import java.time.Instant;

/**
 * A cook in a list.
 *
 * @param id where it is kept
 * @param number counts the cooks of its pan
 * @param pan which pan; may be empty
 * @param batch what was made; may be empty
 * @param startedAt the wall clock at its first reading
 * @param lastedMillis milliseconds of the cook up to which it was watched
 * @param ended whether it is over
 * @param readings how many are kept
 * @param events how many are kept
 * @param thinned how many readings were thinned out
 */
public record CookLine(
        long id,
        int number,
        String pan,
        String batch,
        Instant startedAt,
        long lastedMillis,
        boolean ended,
        long readings,
        long events,
        long thinned) {}
