package spoonfall.probe;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** The one thread of a probe: started once, told to end once, and waited for. For those who write a {@link Probe}. */
public final class ProbeThread {
    private static final long LONGEST_END_SECONDS = 3;

    private final String probe;
    private final CountDownLatch closing = new CountDownLatch(1);
    private @Nullable Thread thread;

    /** The thread of the probe that the kitchen calls {@code probe}. */
    public ProbeThread(String probe) {
        this.probe = probe;
    }

    /**
     * Runs {@code body} on the probe's thread.
     *
     * @throws IllegalStateException if it was started or closed before
     */
    public synchronized void start(Runnable body) {
        if (thread != null || closing()) {
            throw new IllegalStateException("probe " + probe + " was started or closed before");
        }
        thread = new Thread(body, "probe-" + probe);
        thread.start();
    }

    /** Whether the probe is to end; its body looks at this often. */
    public boolean closing() {
        return closing.getCount() == 0;
    }

    /** Waits for so many milliseconds, less if the probe is closed meanwhile, and returns whether it goes on. */
    public boolean pause(long millis) {
        try {
            return !closing.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * Tells the thread to end and waits for it, three seconds at most; may be called again.
     *
     * @param wake frees whatever the body waits for
     */
    public void close(Runnable wake) {
        closing.countDown();
        wake.run();
        Thread ending;
        synchronized (this) {
            ending = thread;
        }
        if (ending != null && ending != Thread.currentThread()) {
            try {
                ending.join(TimeUnit.SECONDS.toMillis(LONGEST_END_SECONDS));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
