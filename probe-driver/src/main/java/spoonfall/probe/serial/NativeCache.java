package spoonfall.probe.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Where the native parts of libraries are unpacked: a folder that only this user can write. */
public final class NativeCache {
    private static final FileAttribute<Set<PosixFilePermission>> OURS_ALONE =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"));

    private NativeCache() {}

    /** The folder, in the user's cache; it may not be there yet. */
    public static Path folder() {
        return folder(System::getenv, System.getProperty("user.home", "."));
    }

    /** The same for another user. */
    static Path folder(Function<String, @Nullable String> environment, String userHome) {
        String cache = environment.apply("XDG_CACHE_HOME");
        Path home = cache == null || cache.isBlank() ? Path.of(userHome, ".cache") : Path.of(cache);
        return home.resolve("spoonfall").resolve("native");
    }

    /** Creates a folder for this user alone. */
    public static void create(Path folder) throws IOException {
        Files.createDirectories(folder, OURS_ALONE);
    }

    /** Closes a folder to others: it may have been there before, and they could put another library in its place. */
    public static void close(Path folder) throws IOException {
        Files.setPosixFilePermissions(folder, OURS_ALONE.value());
    }

    /** Writes a file unless it is there already, at once or not at all. */
    public static void put(Path folder, String name, byte[] wanted) throws IOException {
        Path file = folder.resolve(name);
        if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), wanted)) {
            return;
        }
        create(folder);
        Path part = Files.createTempFile(folder, name, ".part");
        try {
            Files.write(part, wanted);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part); // a full disk would keep one of each attempt
        }
    }
}
