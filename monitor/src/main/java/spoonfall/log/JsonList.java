package spoonfall.log;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A list that is kept as one file of JSON. Whoever reads it sees the old list or the new one.
 *
 * @param file where it is kept; it need not be there yet
 * @param what it is a list of, such as {@code calibrations}
 * @param largestMiB how large it may be
 */
public record JsonList(Path file, String what, int largestMiB) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /**
     * The list; an empty one if there is no file.
     *
     * @throws IllegalArgumentException with one line that says what to do, if it is no such list
     * @throws UncheckedIOException if it cannot be read
     */
    public ArrayNode read() {
        try {
            if (Files.size(file) > largestMiB * 1024L * 1024) {
                throw new IllegalArgumentException(
                        file + " is larger than " + largestMiB + " MiB; move it away to start afresh");
            }
            JsonNode root = MAPPER.readTree(Files.readAllBytes(file));
            if (root instanceof ArrayNode all) {
                return all;
            }
            throw new IllegalArgumentException(file + " is not a list of " + what + "; move it away to start afresh");
        } catch (NoSuchFileException e) {
            return MAPPER.createArrayNode();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(
                    file + ", line " + e.getLocation().getLineNr() + " is not JSON; mend it or move it away", e);
        } catch (CharConversionException e) {
            throw new IllegalArgumentException(file + " is not text; mend it or move it away", e);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Keeps that list in place of the one before.
     *
     * @throws UncheckedIOException if it cannot be written
     */
    public void write(ArrayNode all) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            Files.createDirectories(folder);
            Path part = Files.createTempFile(folder, what, ".part");
            try {
                writeOut(part, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(all));
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part); // a full disk would keep one of each attempt
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }

    /** On the disk when this returns: else a power cut could leave the new name with nothing in it. */
    private static void writeOut(Path part, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }
}
