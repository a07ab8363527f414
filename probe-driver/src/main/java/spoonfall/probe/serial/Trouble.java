package spoonfall.probe.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Says why a port cannot be used, and the way out. */
final class Trouble {
    private static final Path TERMINALS = Path.of("/sys/class/tty");
    private static final Path PSEUDO_TERMINALS = Path.of("/dev/pts");
    private static final int EACCES = 13;
    private static final int EIO = 5;
    private static final int ENXIO = 6;
    private static final int ENODEV = 19;

    private Trouble() {}

    static String notThere(String path) {
        return path + " is not there. Plug the thermometer in; \"spoonfall ports\" lists the ports.";
    }

    static String notAllowed(String path) {
        return "No permission to use " + path + ". Run \"sudo usermod -aG dialout $USER\", then log out and in again.";
    }

    static String inUse(String path) {
        return path + " is in use by another program. Close that program, or name another port.";
    }

    static String unplugged(String path) {
        return path + " was unplugged. Plug it in again; I keep looking.";
    }

    /** Why {@code path} did not open, by what the file system and the system's error number say. */
    static String notOpened(String path, int errno) {
        Path file = Path.of(path);
        if (!Files.exists(file)) {
            return notThere(path);
        }
        if (errno == EACCES || !Files.isReadable(file) || !Files.isWritable(file)) {
            return notAllowed(path);
        }
        if (!isTerminal(file)) {
            return path + " is not a serial port. \"spoonfall ports\" lists the ports.";
        }
        if (errno == EIO || errno == ENXIO || errno == ENODEV) {
            return path + " does not answer (system error " + errno + "). Unplug the thermometer and plug it in again.";
        }
        // The library locks what it opens, and its error number for a lock that is held is not to be relied on.
        return inUse(path);
    }

    /** Whether it is a terminal, as far as the system says. */
    private static boolean isTerminal(Path file) {
        if (Files.isRegularFile(file) || Files.isDirectory(file)) {
            return false;
        }
        try {
            Path device = file.toRealPath();
            return !Files.isDirectory(TERMINALS)
                    || device.startsWith(PSEUDO_TERMINALS)
                    || Files.exists(TERMINALS.resolve(String.valueOf(device.getFileName())));
        } catch (IOException e) {
            return true; // it went away while we looked; the next attempt says so
        }
    }
}
