package spoonfall.door;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The file of the devices: JSON that only its owner may read, with hashes of tokens and no token. Not thread-safe. */
final class DeviceFile {
    private static final Logger LOG = LoggerFactory.getLogger(DeviceFile.class);
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final long LARGEST_BYTES = 256 * 1024;

    /** A lock on a file is the whole program's: within it, books of the same file take turns by this. */
    private static final Object OUR_TURN = new Object();

    private final Path path;
    private Optional<Stamp> stamp = Optional.empty();

    /** By what a file is known to be the one that was read. */
    private record Stamp(long bytes, Instant modifiedAt, String key) {}

    DeviceFile(Path path) {
        this.path = path;
    }

    /** Whether the file is another one than was read or written last. */
    boolean changed() {
        return !stampNow().equals(stamp);
    }

    /**
     * The devices in it; none if it is not there. A file that holds something else is set aside, so that nobody comes in by it and nothing
     * of it is lost.
     */
    List<Device> read() throws IOException {
        Optional<Stamp> now = stampNow();
        List<Device> devices = now.isPresent() ? read(now.get()) : List.of();
        stamp = now; // not before: what could not be read is another one still
        return devices;
    }

    private List<Device> read(Stamp now) throws IOException {
        try {
            if (now.bytes() > LARGEST_BYTES) {
                throw new IllegalArgumentException("it is larger than 256 KiB");
            }
            return devices(MAPPER.readTree(Files.readAllBytes(path)));
        } catch (JsonProcessingException | IllegalArgumentException | DateTimeException e) {
            setAside(e);
            return List.of();
        } catch (NoSuchFileException e) {
            return List.of();
        } catch (IOException e) {
            throw new IOException(path + " cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Reads the devices, and writes what becomes of them in their place, while no other program does the same.
     *
     * @return what is in the file then
     */
    List<Device> change(UnaryOperator<List<Device>> change) throws IOException {
        synchronized (OUR_TURN) {
            try (FileChannel turn = PrivateFile.open(path.resolveSibling(path.getFileName() + ".lock"))) {
                turn.lock();
                List<Device> now = read();
                List<Device> next = change.apply(now);
                if (!next.equals(now)) {
                    write(next);
                }
                return next;
            }
        }
    }

    private void write(List<Device> devices) throws IOException {
        ArrayNode all = MAPPER.createArrayNode();
        for (Device device : devices) {
            all.addObject()
                    .put("id", device.id())
                    .put("name", device.name())
                    .put("role", device.role().wireName())
                    .put("tokenSha256", device.tokenHash())
                    .put("pairedAt", device.pairedAt().toString());
        }
        PrivateFile.write(path, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(all));
        stamp = stampNow();
    }

    private static List<Device> devices(JsonNode all) {
        if (!all.isArray() || all.size() > DeviceBook.MOST) {
            throw new IllegalArgumentException("it is no list of at most " + DeviceBook.MOST + " devices");
        }
        List<Device> devices = new ArrayList<>();
        for (JsonNode node : all) {
            devices.add(new Device(
                    node.path("id").asText(),
                    node.path("name").asText(),
                    Role.named(node.path("role").asText()),
                    node.path("tokenSha256").asText(),
                    Instant.parse(node.path("pairedAt").asText())));
        }
        return List.copyOf(devices);
    }

    private void setAside(Exception why) {
        Path aside = path.resolveSibling(path.getFileName() + ".not-understood");
        String reason = why instanceof JsonProcessingException json ? json.getOriginalMessage() : why.getMessage();
        try {
            Files.deleteIfExists(aside);
            Files.move(path, aside);
            LOG.warn(
                    "the devices in {} are not understood ({}); all must be paired again. It is kept as {}",
                    path,
                    reason,
                    aside);
        } catch (IOException e) {
            LOG.warn("the devices in {} are not understood ({}); all must be paired again", path, reason);
        }
    }

    private Optional<Stamp> stampNow() {
        try {
            BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
            return Optional.of(
                    new Stamp(now.size(), now.lastModifiedTime().toInstant(), String.valueOf(now.fileKey())));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
