package spoonfall.log.store;

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
import java.util.Set;

/**
 * Puts SQLite's native part into a folder that only this user can write. Left to itself the library unpacks a copy into
 * the temporary folder at every start, and leaves it there when the program is killed.
 */
final class NativeSqlite {
    private static final String FILE = "libsqlitejdbc.so";
    private static final String PROPERTY = "org.sqlite.lib.path";
    private static final FileAttribute<Set<PosixFilePermission>> OURS_ALONE =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"));

    private static boolean ready;

    private NativeSqlite() {}

    /** Unpacks it once and tells the library where; must be called before that is first used. */
    static synchronized void prepare() {
        if (ready || System.getProperty(PROPERTY) != null) {
            return;
        }
        String name = "/org/sqlite/native/" + org.sqlite.util.OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + FILE;
        try (InputStream in = org.sqlite.JDBC.class.getResourceAsStream(name)) {
            ready = true;
            if (in == null) {
                return; // not Linux: the library knows better
            }
            byte[] wanted = in.readAllBytes();
            Path folder = cacheFolder();
            Files.createDirectories(folder, OURS_ALONE);
            // It may have been there before, open to others, who could put another library in its place.
            Files.setPosixFilePermissions(folder, OURS_ALONE.value());
            Path file = folder.resolve(FILE);
            if (!Files.exists(file) || !Arrays.equals(Files.readAllBytes(file), wanted)) {
                Path part = Files.createTempFile(folder, FILE, ".part");
                Files.write(part, wanted);
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            }
            System.setProperty(PROPERTY, folder.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "cannot unpack the database's library: " + e.getMessage()
                            + ". Set XDG_CACHE_HOME to a folder that you can write",
                    e);
        }
    }

    private static Path cacheFolder() {
        String cache = System.getenv("XDG_CACHE_HOME");
        Path home = cache == null || cache.isBlank()
                ? Path.of(System.getProperty("user.home", "."), ".cache")
                : Path.of(cache);
        return home.resolve("spoonfall").resolve("native").resolve("sqlite");
    }
}
