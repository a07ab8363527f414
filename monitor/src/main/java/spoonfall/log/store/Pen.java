package spoonfall.log.store;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.Recalled;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.file.Fault;
import spoonfall.log.store.write.Marked;

/** What every journal and diary has: it hands over to the recorder, and knows how far its thing was watched. */
class Pen {
    private static final Logger LOG = LoggerFactory.getLogger(Pen.class);
    private static final Duration SETTLES_WITHIN = Duration.ofMillis(500);

    /** A large record on a slow card, or one that was damaged, takes that long to open. */
    private static final long ANSWERS_WITHIN_MILLIS = 20_000;

    /** Whoever waited for so long in vain asks again without standing still each time. */
    private static final long AGAIN_WITHIN_MILLIS = 200;

    private final Recorder recorder;
    private volatile boolean unanswered;
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

    /** Asks the file what it holds; not known if it does not answer, or not in time. */
    final <T> Recalled<T> asked(Function<CookStore, Optional<T>> question) {
        CompletableFuture<Optional<T>> answer = recorder.ask(question);
        try {
            long withinMillis = unanswered ? AGAIN_WITHIN_MILLIS : ANSWERS_WITHIN_MILLIS;
            Optional<T> found = answer.get(withinMillis, TimeUnit.MILLISECONDS);
            unanswered = false;
            return Recalled.of(found);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Recalled.notKnown();
        } catch (ExecutionException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            if (cause instanceof Inbox.NotOpenException || Fault.isOfTheFile(cause)) {
                return unanswered(e);
            }
            LOG.error("what an earlier run left cannot be read, and stays in the record as it is", cause);
            return Recalled.nothing();
        } catch (TimeoutException e) {
            answer.cancel(false);
            return unanswered(e);
        }
    }

    private <T> Recalled<T> unanswered(Exception why) {
        if (!unanswered) {
            LOG.warn("the record does not answer: what an earlier run left is not known yet");
        }
        LOG.debug("because", why);
        unanswered = true;
        return Recalled.notKnown();
    }
}
