package spoonfall.log;

import java.time.Duration;
import java.util.List;

/**
 * A cook that an earlier run of the service left before it was over.
 *
 * @param id where the record keeps it
 * @param header what was known at its first reading
 * @param inputs what went into it, in order
 * @param events how many events came out of it
 * @param aliveMillis milliseconds of the cook up to which it was watched
 * @param away how long nobody has watched it since, by our own clocks
 */
public record UnfinishedCook(
        long id, CookHeader header, List<CookInput> inputs, int events, long aliveMillis, Duration away) {
    /** Keeps a copy of the list. */
    public UnfinishedCook {
        inputs = List.copyOf(inputs);
        if (away.isNegative()) {
            throw new IllegalArgumentException("nobody can be away for " + away);
        }
    }
}
