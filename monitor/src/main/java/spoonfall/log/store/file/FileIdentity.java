package spoonfall.log.store.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/** What tells a file from another one of its name. */
public final class FileIdentity {
    private FileIdentity() {}

    /** That of the file that is there now; empty if there is none, or the system tells none from another. */
    public static Optional<Object> of(Path file) {
        try {
            return Optional.ofNullable(
                    Files.readAttributes(file, BasicFileAttributes.class).fileKey());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
