package spoonfall.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A folder in memory, where there is one, for parsers that read files. */
public final class Scratch {
    private static final Path SHARED_MEMORY = Path.of("/dev/shm");
    private static final Path FOLDER = made();

    private Scratch() {}

    /** A file of that name with these bytes in it. */
    public static Path holding(String name, byte[] bytes) {
        try {
            return Files.write(FOLDER.resolve(name), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** No file of that name any longer. */
    public static void without(String name) {
        try {
            Files.deleteIfExists(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path made() {
        try {
            Path folder = Files.isWritable(SHARED_MEMORY)
                    ? Files.createTempDirectory(SHARED_MEMORY, "spoonfall-fuzz")
                    : Files.createTempDirectory("spoonfall-fuzz");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder), "remove " + folder));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
