package spoonfall.log.store.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.probe.serial.NativeCache;

/**
 * Puts SQLite's native part into a folder that only this user can write. Left to itself the library unpacks a copy into
 * the temporary folder at every start, and leaves it there when the program is killed.
 */
final class NativeSqlite {
    private static final Logger LOG = LoggerFactory.getLogger(NativeSqlite.class);
    private static final String FILE = "libsqlitejdbc.so";
    private static final String PROPERTY = "org.sqlite.lib.path";
    private static final String WAY_OUT = "set XDG_CACHE_HOME to a folder that this user can write";

    private static boolean ready;

    private NativeSqlite() {}

    /** Unpacks it once and tells the library where; must be called before that is first used. */
    static synchronized void prepare() {
        if (ready || System.getProperty(PROPERTY) != null) {
            return;
        }
        String name = "/org/sqlite/native/" + org.sqlite.util.OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + FILE;
        try (InputStream in = org.sqlite.JDBC.class.getResourceAsStream(name)) {
            if (in != null) { // else not Linux: the library knows better
                Path folder = unpacked(NativeCache.folder().resolve("sqlite"), in.readAllBytes());
                System.setProperty(PROPERTY, folder.toString());
            }
            ready = true;
        } catch (IOException e) {
            throw new NotUnpackedException(e);
        }
    }

    /** Where it is now: that folder, or one for this run alone where that cannot be written. */
    static Path unpacked(Path folder, byte[] library) throws IOException {
        try {
            NativeCache.create(folder);
            NativeCache.close(folder);
            NativeCache.put(folder, FILE, library);
            return folder;
        } catch (IOException e) {
            LOG.warn(
                    "{} cannot be written ({}), so the database's library is unpacked anew at every start; {}",
                    folder,
                    e,
                    WAY_OUT);
            return unpackedForThisRun(library);
        }
    }

    private static Path unpackedForThisRun(byte[] library) throws IOException {
        Path folder = Files.createTempDirectory("spoonfall-sqlite"); // this user's alone
        try {
            NativeCache.put(folder, FILE, library);
        } catch (IOException e) {
            Files.deleteIfExists(folder.resolve(FILE)); // it is tried again, and nothing may pile up
            Files.deleteIfExists(folder);
            throw e;
        }
        folder.toFile().deleteOnExit();
        folder.resolve(FILE).toFile().deleteOnExit();
        return folder;
    }

    /** It could be put nowhere. */
    static final class NotUnpackedException extends UncheckedIOException {
        private static final long serialVersionUID = 1L;

        NotUnpackedException(IOException cause) {
            super("cannot unpack the database's library: " + cause.getMessage() + "; " + WAY_OUT, cause);
        }
    }
}
