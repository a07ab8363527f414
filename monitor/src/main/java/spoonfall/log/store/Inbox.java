package spoonfall.log.store;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.write.Writer;

/** What waits to be written, in order, and who waits for it. Filled by any thread, emptied by the recorder's. */
final class Inbox {
    /** More than two hours of two thermometers at ten readings a second. */
    static final int MOST_HELD = 200_000;

    private static final int ROOM_FOR_WORDS = 20_000;
    private static final Logger LOG = LoggerFactory.getLogger(Inbox.class);

    private final LinkedBlockingQueue<Recorder.Step> queue = new LinkedBlockingQueue<>(MOST_HELD + ROOM_FOR_WORDS);
    private final Queue<Settle> questions = new ConcurrentLinkedQueue<>();
    private final AtomicLong dropped = new AtomicLong();
    private volatile boolean losing;

    /** Somebody who waits for what came before, and is told with the file if it is open. */
    record Settle(Consumer<Optional<Database>> then) implements Recorder.Step {
        @Override
        public void write(Handle handle, Map<Pen, Writer> writers) {
            // there is nothing to write
        }

        void done(Optional<Database> open) {
            then.accept(open);
        }
    }

    int size() {
        return queue.size();
    }

    /** How many readings were dropped because memory was full. */
    long dropped() {
        return dropped.get();
    }

    /** Takes a reading, or drops it when memory is full. */
    void offerReading(Recorder.Step step) {
        if (queue.size() >= MOST_HELD || !queue.offer(step)) {
            dropped.incrementAndGet();
            if (!losing) {
                losing = true;
                LOG.warn("nothing could be written for so long that memory is full: readings are lost from now on");
            }
        }
    }

    /** Whether readings were dropped since things could last be written. */
    boolean losing() {
        return losing;
    }

    /** What is to be said of that now that they can; it is over. */
    String lostWords() {
        String words = losing ? "; " + dropped.get() + " readings were lost to the record so far" : "";
        losing = false;
        return words;
    }

    /** Takes a word or an event. */
    void offer(Recorder.Step step) {
        if (!queue.offer(step)) {
            LOG.error("memory is full of what could not be written; something was lost for the record");
        }
    }

    /** Waits until all that was offered was gone through; says whether it was. */
    boolean settle(Duration atMost) {
        CountDownLatch done = new CountDownLatch(1);
        if (!queue.offer(new Settle(open -> done.countDown()))) {
            return false;
        }
        try {
            return done.await(atMost.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Asks the file; fails if it is not open. */
    <T> CompletableFuture<T> ask(Function<Database, T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        questions.add(new Settle(open -> {
            if (answer.isDone()) {
                return; // nobody waits for it any more
            }
            try {
                answer.complete(question.apply(open.orElseThrow(NotOpenException::new)));
            } catch (RuntimeException e) {
                answer.completeExceptionally(e);
            }
        }));
        wake();
        return answer;
    }

    /** Lets the recorder look; a full queue is awake. */
    void wake() {
        if (!queue.offer(new Settle(open -> {}))) {
            LOG.debug("the recorder is awake");
        }
    }

    /**
     * Takes what comes until an instant, or until somebody waits, or until there is as much as is written at once.
     *
     * @param batch where it goes
     * @return who waits
     */
    List<Settle> collect(List<Recorder.Step> batch, int most, long untilNanos, BooleanSupplier goesOn)
            throws InterruptedException {
        List<Settle> asked = new ArrayList<>();
        while (goesOn.getAsBoolean() && asked.isEmpty() && batch.size() < most) {
            Recorder.Step step = queue.poll(Math.max(0, untilNanos - System.nanoTime()), TimeUnit.NANOSECONDS);
            if (step == null) {
                break;
            }
            take(step, batch, asked);
        }
        addQuestions(asked);
        return asked;
    }

    /** Takes all that is there. */
    List<Settle> all(List<Recorder.Step> batch) {
        List<Settle> asked = new ArrayList<>();
        for (Recorder.Step step = queue.poll(); step != null; step = queue.poll()) {
            take(step, batch, asked);
        }
        addQuestions(asked);
        return asked;
    }

    private void addQuestions(List<Settle> asked) {
        for (Settle question = questions.poll(); question != null; question = questions.poll()) {
            asked.add(question);
        }
    }

    /** The file is not open. */
    static final class NotOpenException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotOpenException() {
            super("the record is not open");
        }
    }

    private static void take(Recorder.Step step, List<Recorder.Step> batch, List<Settle> asked) {
        if (step instanceof Settle settle) {
            asked.add(settle);
        } else {
            batch.add(step);
        }
    }
}
