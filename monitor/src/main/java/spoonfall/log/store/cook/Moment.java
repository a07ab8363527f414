package spoonfall.log.store.cook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * An instant by two clocks: the wall's, which people may set, and that of this run of the operating system, which nobody
 * can, and which goes on while a laptop sleeps.
 *
 * @param wallMillis Unix milliseconds
 * @param boot which run of the operating system it is; empty if it does not say
 * @param uptimeMillis how long that has run
 */
public record Moment(long wallMillis, String boot, long uptimeMillis) {
    private static final Path BOOT = Path.of("/proc/sys/kernel/random/boot_id");
    private static final Path UPTIME = Path.of("/proc/uptime");

    /** Now. */
    public static Moment now() {
        long wallMillis = System.currentTimeMillis();
        try {
            String boot = Files.readString(BOOT).strip();
            double uptimeS = Double.parseDouble(Files.readString(UPTIME).split(" ", 2)[0]);
            return new Moment(wallMillis, boot, Math.round(uptimeS * 1000));
        } catch (IOException | NumberFormatException e) {
            return new Moment(wallMillis, "", 0); // not Linux: the wall clock has to do
        }
    }

    /** How much time has passed since another one; none if the clocks say that it lies ahead. */
    public Duration since(Moment earlier) {
        boolean sameRun = !boot.isEmpty() && boot.equals(earlier.boot);
        long millis = sameRun ? uptimeMillis - earlier.uptimeMillis : wallMillis - earlier.wallMillis;
        return Duration.ofMillis(Math.max(0, millis));
    }

    /** The same, so many milliseconds earlier. */
    public Moment minusMillis(long millis) {
        return new Moment(wallMillis - millis, boot, uptimeMillis - millis);
    }
}
