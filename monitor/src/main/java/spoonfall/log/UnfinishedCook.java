package spoonfall.log;

import java.time.Duration;
import java.util.List;

/**
 * A cook that an earlier run of the service left before it was over.
 *
 * @param id where the record keeps it
 * @param header what was known at its first reading
 * @param inputs what went into it, in order
 * @param notes what somebody wrote of it, in order
 * @param events how many events came out of it
 * @param aliveMillis milliseconds of the cook up to which it was watched
 * @param away how long nobody has watched it since, by our own clocks
 */
public record UnfinishedCook(
        long id,
        CookHeader header,
        List<CookInput> inputs,
        List<CookNote> notes,
        int events,
        long aliveMillis,
        Duration away) {
    /** Keeps copies of the lists. */
    public UnfinishedCook {
        inputs = List.copyOf(inputs);
        notes = List.copyOf(notes);
        if (away.isNegative()) {
            throw new IllegalArgumentException("nobody can be away for " + away);
        }
    }
}
