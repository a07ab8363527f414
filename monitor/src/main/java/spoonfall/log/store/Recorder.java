package spoonfall.log.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookJournal;
import spoonfall.log.Diary;

/**
 * Writes cooks down: one thread, named {@code recorder}, owns the file and commits once a second, and at once when
 * somebody waits for it. What cannot be written stays in memory, in order, until it can be. When memory holds {@link
 * #MOST_HELD} things, further readings are dropped and counted; words and events have room of their own beyond that.
 */
public final class Recorder implements AutoCloseable {
    /** More than two hours of two thermometers at ten readings a second. */
    static final int MOST_HELD = 200_000;

    private static final int ROOM_FOR_WORDS = 20_000;
    private static final int MOST_AT_ONCE = 10_000;
    private static final long COMMIT_EVERY_MILLIS = 1000;
    private static final long MARK_EVERY_MILLIS = 10_000;
    private static final Logger LOG = LoggerFactory.getLogger(Recorder.class);

    private final Path file;
    private final Opener opener;
    private final Supplier<Moment> clock;
    private final FolderLock lock;
    private final LinkedBlockingQueue<Step> queue = new LinkedBlockingQueue<>(MOST_HELD + ROOM_FOR_WORDS);
    private final List<Step> batch = new ArrayList<>();
    private final Queue<Settle> questions = new ConcurrentLinkedQueue<>();
    private final AtomicLong dropped = new AtomicLong();
    private final Thread thread;
    private Map<Pen, Writer> writers = new LinkedHashMap<>();
    private @Nullable Database database;
    private long markedNanos;
    private volatile Optional<Unrecorded> trouble = Optional.empty();
    private volatile boolean running = true;

    /** How the file is opened. */
    interface Opener {
        Database open(Path file) throws SQLException;
    }

    /** One thing to be written. It may be written again when a transaction came to nothing. */
    interface Step {
        void write(Handle handle, Map<Pen, Writer> writers);
    }

    Recorder(Path file, Opener opener, Supplier<Moment> clock) {
        this.file = file;
        this.opener = opener;
        this.clock = clock;
        lock = FolderLock.take(file);
        thread = new Thread(this::run, "recorder");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * A recorder at work.
     *
     * @param file the file of all cooks, which need not be there yet
     * @throws IllegalArgumentException if another program writes it
     */
    public static Recorder open(Path file) {
        try {
            Database.makeFolder(file);
        } catch (java.io.UncheckedIOException e) {
            LOG.debug("it will be said when nothing can be written", e);
        }
        return new Recorder(file, CookFile::open, Moment::now);
    }

    /** Where the cooks of one pan are written; the pan's name is empty where there is one only. */
    public CookJournal journal(String pan) {
        return new PanJournal(pan, this);
    }

    /** Where something beside the cooks is written down, such as {@code jars}. */
    public Diary diary(String subject) {
        return new DiaryPen(subject, this);
    }

    /** Why nothing can be written just now; empty if all is well. */
    public Optional<Unrecorded> trouble() {
        return trouble;
    }

    /** How many readings were dropped because memory was full. */
    public long dropped() {
        return dropped.get();
    }

    /** How many things wait to be written. */
    public int held() {
        return queue.size();
    }

    /** Takes a reading, or drops it when memory is full. */
    void offerReading(Step step) {
        if (queue.size() >= MOST_HELD || !queue.offer(step)) {
            if (dropped.getAndIncrement() == 0) {
                LOG.warn("nothing could be written for so long that memory is full: readings are lost from now on");
            }
        }
    }

    /** Takes a word or an event. */
    void offer(Step step) {
        if (!queue.offer(step)) {
            LOG.error("memory is full of what could not be written; something was lost for the record");
        }
    }

    /** Waits until all that was offered is on the disk; says whether it is. */
    boolean settle(Duration atMost) {
        if (trouble.isPresent() || !thread.isAlive()) {
            return false;
        }
        CountDownLatch done = new CountDownLatch(1);
        if (!queue.offer(new Settle(open -> done.countDown()))) {
            return false;
        }
        try {
            return done.await(atMost.toMillis(), TimeUnit.MILLISECONDS) && trouble.isEmpty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Asks the file, on the recorder's thread; fails if it cannot be read. */
    <T> CompletableFuture<T> ask(Function<CookStore, T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Settle asking = new Settle(open -> {
            try {
                answer.complete(question.apply(new CookStore(open.orElseThrow().handle())));
            } catch (RuntimeException e) {
                answer.completeExceptionally(e);
            }
        });
        questions.add(asking);
        queue.offer(new Settle(open -> {})); // wakes it; a full queue is awake
        return answer;
    }

    /** Now, by the recorder's clocks. */
    Moment now() {
        return clock.get();
    }

    /** Somebody who waits for what came before, and is told with the file if it is open. */
    private record Settle(Consumer<Optional<Database>> then) implements Step {
        @Override
        public void write(Handle handle, Map<Pen, Writer> writers) {
            // there is nothing to write
        }

        void done(Optional<Database> open) {
            then.accept(open);
        }
    }

    private void run() {
        try {
            commit();
            while (running) {
                List<Settle> asked = collect();
                commit();
                asked.forEach(one -> one.done(Optional.ofNullable(database)));
            }
            collectAll();
            commit();
        } catch (InterruptedException e) {
            LOG.debug("recorder interrupted; closing");
        } catch (RuntimeException e) {
            LOG.error("the recorder stopped", e);
            trouble = Optional.of(new Unrecorded("the recorder stopped", "Restart Spoonfall when the pan allows it."));
        } finally {
            close(database);
            lock.close();
        }
    }

    /** Takes what comes for a second, or until somebody waits. While the file is in trouble the queue holds it all. */
    private List<Settle> collect() throws InterruptedException {
        List<Settle> asked = new ArrayList<>();
        long untilNanos = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(COMMIT_EVERY_MILLIS);
        while (running && asked.isEmpty() && batch.size() < MOST_AT_ONCE) {
            Step step = queue.poll(Math.max(0, untilNanos - System.nanoTime()), TimeUnit.NANOSECONDS);
            if (step == null) {
                break;
            }
            take(step, asked);
        }
        if (batch.size() >= MOST_AT_ONCE && trouble.isPresent()) {
            TimeUnit.NANOSECONDS.sleep(Math.max(0, untilNanos - System.nanoTime()));
        }
        for (Settle question = questions.poll(); question != null; question = questions.poll()) {
            asked.add(question);
        }
        return asked;
    }

    private void collectAll() {
        List<Settle> asked = new ArrayList<>();
        for (Step step = queue.poll(); step != null; step = queue.poll()) {
            take(step, asked);
        }
        asked.forEach(one -> one.done(Optional.empty()));
    }

    private void take(Step step, List<Settle> asked) {
        if (step instanceof Settle settle) {
            asked.add(settle);
        } else {
            batch.add(step);
        }
    }

    private void commit() {
        boolean markDue = System.nanoTime() - markedNanos > TimeUnit.MILLISECONDS.toNanos(MARK_EVERY_MILLIS);
        if (batch.isEmpty() && database != null && !(markDue && !writers.isEmpty())) {
            return;
        }
        try {
            Database open = database == null ? reopened() : database;
            Map<Pen, Writer> next = new LinkedHashMap<>();
            writers.forEach((journal, writer) -> next.put(journal, writer.copy()));
            open.handle().useTransaction(handle -> write(handle, next));
            writers = next;
            batch.clear();
            markedNanos = System.nanoTime();
            if (trouble.isPresent()) {
                LOG.warn("cooks are recorded again");
                trouble = Optional.empty();
            }
        } catch (RuntimeException | SQLException e) {
            fail(e);
        }
    }

    private Database reopened() throws SQLException {
        Database fresh = opener.open(file);
        database = fresh;
        writers.values().forEach(Writer::fileChanged);
        return fresh;
    }

    private void write(Handle handle, Map<Pen, Writer> next) {
        next.forEach((journal, writer) -> writer.begin(handle, journal.marked()));
        for (Step step : batch) {
            step.write(handle, next);
        }
        next.forEach((journal, writer) -> {
            writer.flush(handle);
            writer.mark(handle, journal.marked());
        });
    }

    private void fail(Exception e) {
        Fault fault = Fault.of(e);
        Unrecorded words = fault.words(file);
        if (!trouble.equals(Optional.of(words))) {
            LOG.warn("cooks are not recorded: {}. {}", words.why(), words.act());
            LOG.debug("because", e);
        }
        trouble = Optional.of(words);
        if (fault != Fault.FULL && fault != Fault.BUSY) {
            close(database);
            database = null;
        }
    }

    private static void close(@Nullable Database open) {
        try {
            if (open != null) {
                open.close();
            }
        } catch (RuntimeException e) {
            LOG.debug("the file could not be closed", e);
        }
    }

    /** Writes what is left and closes the file. */
    @Override
    public void close() {
        running = false;
        queue.offer(new Settle(open -> {}));
        try {
            thread.join(5000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
