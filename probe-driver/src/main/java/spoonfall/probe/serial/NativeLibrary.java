package spoonfall.probe.serial;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

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

    private static boolean ready;

    private NativeLibrary() {}

    /** Unpacks it once and tells the serial library where; must be called before that is first used. */
    static synchronized void prepare() {
        boolean linux = System.getProperty("os.name", "").startsWith("Linux");
        if (ready || !linux || System.getProperty(PROPERTY) != null) {
            return;
        }
        try {
            Path folder = NativeCache.folder();
            NativeCache.create(folder);
            NativeCache.close(parent(folder));
            NativeCache.close(folder);
            for (String architecture : ARCHITECTURES) {
                unpack(folder, "Linux/" + architecture);
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

    private static Path parent(Path folder) {
        Path parent = folder.getParent();
        return parent == null ? folder : parent;
    }

    private static void unpack(Path folder, String place) throws IOException {
        try (InputStream in = NativeLibrary.class.getResourceAsStream("/" + place + "/" + FILE)) {
            if (in != null) {
                NativeCache.put(folder.resolve(place), FILE, in.readAllBytes());
            }
        }
    }
}
