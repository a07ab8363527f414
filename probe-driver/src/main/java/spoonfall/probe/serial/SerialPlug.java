package spoonfall.probe.serial;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.ProbeThread;

/** Opens a probe's port on the probe's thread, again and again, until the probe is closed. */
final class SerialPlug {
    /** So that a device is found within two seconds of its coming back. */
    private static final long RETRY_MILLIS = 400;

    private final SerialSettings settings;
    private final int readMillis;
    private final ProbeThread thread;
    private final AtomicReference<@Nullable SerialLink> link = new AtomicReference<>();

    /** What a probe does while its port is open. */
    interface Session {
        /** Uses the open port until the probe is closing; a lost device ends it with an exception. */
        void use(SerialLink link) throws IOException;
    }

    /**
     * A port that is not open yet.
     *
     * @param probe whose port it is, for the thread's name
     * @param settings how to open it
     * @param readMillis how long a read waits for bytes
     */
    SerialPlug(String probe, SerialSettings settings, int readMillis) {
        this.settings = settings;
        this.readMillis = readMillis;
        thread = new ProbeThread(probe);
    }

    /** Starts; {@code trouble} hears, in one line, why the port could not be opened or was lost. */
    void start(Session session, Consumer<String> trouble) {
        thread.start(() -> {
            do {
                try (SerialLink open = SerialLink.open(settings, readMillis)) {
                    link.set(open);
                    session.use(open);
                } catch (RuntimeException e) {
                    // A fault of ours: the thread ends, but whoever waits for readings hears of it first.
                    trouble.accept(settings.path() + " can no longer be read: " + e + ". Start Spoonfall again");
                    throw e;
                } catch (IOException e) {
                    trouble.accept(e.getMessage() == null ? Trouble.unplugged(settings.path()) : e.getMessage());
                }
                link.set(null);
            } while (thread.pause(RETRY_MILLIS));
        });
    }

    boolean closing() {
        return thread.closing();
    }

    /** Waits, and returns whether the probe goes on. */
    boolean pause(long millis) {
        return thread.pause(millis);
    }

    void close() {
        thread.close(() -> {
            SerialLink open = link.getAndSet(null);
            if (open != null) {
                open.close();
            }
        });
    }
}
