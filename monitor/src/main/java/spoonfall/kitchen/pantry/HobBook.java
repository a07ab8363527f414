package spoonfall.kitchen.pantry;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.StreamSupport;
import spoonfall.log.JsonList;
import spoonfall.plan.HobPower;

/** What earlier cooks showed of the hob below each pan: the water that left in a minute of boiling. A file of JSON. */
public final class HobBook {
    private static final int LARGEST_MIB = 1;

    /** A hob that was replaced is forgotten after so many cooks. */
    private static final int LATEST = 8;

    private final JsonList list;

    /** The book in a file, which need not be there yet. */
    public HobBook(Path file) {
        list = new JsonList(file, "cooks", LARGEST_MIB);
    }

    /** What heats a pan, by its latest cooks; empty if none was planned and cooked. */
    public synchronized Optional<HobPower> power(String pan) {
        double[] rates = StreamSupport.stream(list.read().spliterator(), false)
                .filter(node -> node.path("pan").asText().equals(pan))
                .mapToDouble(node -> node.path("waterKgPerMin").asDouble())
                .filter(rate -> rate > 0.002 && rate < 0.5)
                .toArray();
        int skip = Math.max(0, rates.length - LATEST);
        return rates.length == 0
                ? Optional.empty()
                : Optional.of(HobPower.learnt(java.util.Arrays.copyOfRange(rates, skip, rates.length)));
    }

    /** Adds what a cook showed. */
    public synchronized void add(String pan, Instant at, double waterKgPerMin) {
        ArrayNode all = list.read();
        ObjectNode node = all.addObject();
        node.put("pan", pan).put("at", at.toString()).put("waterKgPerMin", waterKgPerMin);
        list.write(all);
    }
}
