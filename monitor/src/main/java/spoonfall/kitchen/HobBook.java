package spoonfall.kitchen;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.StreamSupport;
import spoonfall.plan.HobPower;

/** What earlier cooks showed of the hob below each pan: the water that left in a minute of boiling. A file of JSON. */
public final class HobBook {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final long LARGEST_BYTES = 1024 * 1024;

    /** A hob that was replaced is forgotten after so many cooks. */
    private static final int LATEST = 8;

    private final Path file;

    /** The book in a file, which need not be there yet. */
    public HobBook(Path file) {
        this.file = file;
    }

    /** What heats a pan, by its latest cooks; empty if none was planned and cooked. */
    public synchronized Optional<HobPower> power(String pan) {
        double[] rates = StreamSupport.stream(read().spliterator(), false)
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
        ArrayNode all = read();
        ObjectNode node = all.addObject();
        node.put("pan", pan).put("at", at.toString()).put("waterKgPerMin", waterKgPerMin);
        try {
            Path folder = file.toAbsolutePath().getParent();
            Files.createDirectories(folder);
            Path part = Files.createTempFile(folder, "hob", ".part");
            Files.write(part, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(all));
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }

    private ArrayNode read() {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 1 MiB; move it away to start afresh");
            }
            JsonNode root = MAPPER.readTree(Files.readAllBytes(file));
            if (root instanceof ArrayNode all) {
                return all;
            }
            throw new IllegalArgumentException(file + " is not a list of cooks; move it away to start afresh");
        } catch (NoSuchFileException e) {
            return MAPPER.createArrayNode();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(file + " is not JSON; mend it or move it away", e);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read: " + e.getMessage(), e);
        }
    }
}
