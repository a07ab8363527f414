package spoonfall.log.store;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.write.Marked;

/** What every journal and diary has: it hands over to the recorder, and knows how far its thing was watched. */
class Pen {
    private static final Logger LOG = LoggerFactory.getLogger(Pen.class);
    private static final Duration SETTLES_WITHIN = Duration.ofMillis(500);
    private static final long ANSWERS_WITHIN_S = 20;

    private final Recorder recorder;
    private volatile Alive alive = new Alive(0, System.nanoTime());

    Pen(Recorder recorder) {
        this.recorder = recorder;
    }

    /** How far it was watched, and when by our own monotonic clock. */
    private record Alive(long millis, long atNanos) {}

    /** What writes. */
    final Recorder recorder() {
        return recorder;
    }

    /** Its thing was watched up to that millisecond of it. */
    public void alive(long atMillis) {
        alive = new Alive(atMillis, System.nanoTime());
    }

    /** How far it was watched, by clocks that outlast this run. */
    final Marked marked() {
        Alive latest = alive;
        long agoMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - latest.atNanos());
        return new Marked(latest.millis(), recorder.now().minusMillis(agoMillis));
    }

    /** Waits until everything said so far is on the disk, half a second at most. */
    public boolean settle() {
        return recorder.settle(SETTLES_WITHIN);
    }

    /** Asks the file; empty if it does not answer. */
    final <T> Optional<T> asked(Function<CookStore, T> question) {
        try {
            return Optional.of(recorder.ask(question).get(ANSWERS_WITHIN_S, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            LOG.debug("the record did not answer", e);
        }
        return Optional.empty();
    }
}
