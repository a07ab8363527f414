package spoonfall.probe.serial;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Puts the serial library's native part into a folder that only this user can write. Left to itself the
 * library unpacks to a world-writable, predictable place under the temporary folder, where another user of
 * the machine could have put something else.
 */
final class NativeLibrary {
    private static final String FILE = "libjSerialComm.so";
    private static final String PROPERTY = "jSerialComm.library.path";
    private static final List<String> ARCHITECTURES =
            List.of("x86_64", "x86", "armv8_64", "armv8_32", "armv7hf", "armv6hf", "armv5", "ppc64le");

    private static final FileAttribute<Set<PosixFilePermission>> OURS_ALONE =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"));

    private static boolean ready;

    private NativeLibrary() {}

    /** Unpacks it once and tells the serial library where; must be called before that is first used. */
    static synchronized void prepare() {
        boolean linux = System.getProperty("os.name", "").startsWith("Linux");
        if (ready || !linux || System.getProperty(PROPERTY) != null) {
            return;
        }
        try {
            Path folder = cacheFolder();
            Files.createDirectories(folder, OURS_ALONE);
            // They may have been there before, open to others, who could put another library in their place.
            Files.setPosixFilePermissions(parent(folder), OURS_ALONE.value());
            Files.setPosixFilePermissions(folder, OURS_ALONE.value());
            for (String architecture : ARCHITECTURES) {
                unpack(folder, "Linux/" + architecture + "/" + FILE);
            }
            System.setProperty(PROPERTY, folder.toString());
            ready = true;
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "cannot unpack the serial library: " + e.getMessage()
                            + ". Set XDG_CACHE_HOME to a folder that you can write",
                    e);
        }
    }

    private static Path cacheFolder() {
        String cache = System.getenv("XDG_CACHE_HOME");
        Path home = cache == null || cache.isBlank()
                ? Path.of(System.getProperty("user.home", "."), ".cache")
                : Path.of(cache);
        return home.resolve("spoonfall").resolve("native");
    }

    private static Path parent(Path folder) {
        Path parent = folder.getParent();
        return parent == null ? folder : parent;
    }

    private static void unpack(Path folder, String name) throws IOException {
        try (InputStream in = NativeLibrary.class.getResourceAsStream("/" + name)) {
            if (in == null) {
                return;
            }
            byte[] wanted = in.readAllBytes();
            Path file = folder.resolve(name);
            if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), wanted)) {
                return;
            }
            Files.createDirectories(file.getParent(), OURS_ALONE);
            Path part = Files.createTempFile(file.getParent(), FILE, ".part");
            Files.write(part, wanted);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
