package spoonfall.log.store.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.List;
import java.util.OptionalLong;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookNote;

/**
 * A cook as the record keeps it.
 *
 * @param id where it is kept
 * @param header what was known at its first reading
 * @param inputs what went into it, in order
 * @param events what came out of it, in order
 * @param notes what somebody wrote of it, in order
 * @param aliveMillis milliseconds of the cook up to which it was watched
 * @param aliveAt when that was
 * @param endedMillis milliseconds of the cook at which it was over; empty if nobody said so
 * @param damaged how many chunks of readings could not be read
 */
public record StoredCook(
        long id,
        CookHeader header,
        List<CookInput> inputs,
        List<Event> events,
        List<CookNote> notes,
        long aliveMillis,
        Moment aliveAt,
        OptionalLong endedMillis,
        int damaged) {
    /** A cook of which nothing was written for so long is left for now. */
    public static final Duration LEFT_AFTER = Duration.ofMinutes(10);

    /**
     * Something that came out of a cook.
     *
     * @param atMillis milliseconds of the cook
     * @param kind such as {@code alarm}
     * @param detail what was kept of it
     */
    public record Event(long atMillis, String kind, ObjectNode detail) {}

    /** Milliseconds of the cook of the latest thing that is kept of it. */
    public long latestMillis() {
        long input = inputs.isEmpty() ? 0 : inputs.get(inputs.size() - 1).takenMillis();
        long event = events.isEmpty() ? 0 : events.get(events.size() - 1).atMillis();
        return Math.max(input, event);
    }

    /**
     * Whether it still boils in somebody's pan, as far as the record tells: nobody said that it is over, it did not come off the heat, and
     * it was watched lately.
     */
    public boolean goesOn() {
        String stage = "";
        for (Event event : events) {
            stage = event.kind().equals("stage") ? event.detail().path("stage").asText() : stage;
        }
        boolean lately = Moment.now().since(aliveAt).compareTo(LEFT_AFTER) < 0;
        return endedMillis.isEmpty() && lately && !stage.equals("off-the-heat");
    }

    /** Keeps copies of the lists. */
    public StoredCook {
        inputs = List.copyOf(inputs);
        events = List.copyOf(events);
        notes = List.copyOf(notes);
    }
}
