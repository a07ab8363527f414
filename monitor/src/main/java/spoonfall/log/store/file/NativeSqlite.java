package spoonfall.log.store.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import spoonfall.probe.serial.NativeCache;

/**
 * Puts SQLite's native part into a folder that only this user can write. Left to itself the library unpacks a copy into
 * the temporary folder at every start, and leaves it there when the program is killed.
 */
final class NativeSqlite {
    private static final String FILE = "libsqlitejdbc.so";
    private static final String PROPERTY = "org.sqlite.lib.path";

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
            Path folder = NativeCache.folder().resolve("sqlite");
            NativeCache.create(folder);
            NativeCache.close(folder);
            NativeCache.put(folder, FILE, in.readAllBytes());
            System.setProperty(PROPERTY, folder.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "cannot unpack the database's library: " + e.getMessage()
                            + ". Set XDG_CACHE_HOME to a folder that you can write",
                    e);
        }
    }
}
