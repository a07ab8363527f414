package spoonfall.log.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookJournal;
import spoonfall.log.Diary;
import spoonfall.log.KeepRules;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.file.CookFile;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.file.Fault;
import spoonfall.log.store.file.FileIdentity;
import spoonfall.log.store.file.FolderLock;
import spoonfall.log.store.write.Writer;

/**
 * Writes cooks down: one thread, named {@code recorder}, owns the file and commits a little more than once a second, and at once
 * when somebody waits for it. What cannot be written stays in memory, in order, until it can be. When memory holds {@link
 * Inbox#MOST_HELD} things, further readings are dropped and counted; words and events have room of their own beyond that.
 */
public final class Recorder implements AutoCloseable {
    private static final int MOST_AT_ONCE = 10_000;

    /** A kill loses what came since the last commit: with the commit's own time that stays below a second. */
    private static final long COMMIT_EVERY_MILLIS = 800;

    private static final long MARK_EVERY_MILLIS = 10_000;
    private static final Unrecorded STOPPED =
            new Unrecorded("the recorder stopped", "Restart Spoonfall when the pan allows it.");
    private static final Logger LOG = LoggerFactory.getLogger(Recorder.class);

    private final Path file;
    private final Opener opener;
    private final Supplier<Moment> clock;
    private final FolderLock lock;
    private final Inbox inbox = new Inbox();
    private final Batch batch = new Batch();
    private final Thread thread;
    private Map<Pen, Writer> writers = new LinkedHashMap<>();
    private @Nullable Database database;
    private Optional<Object> identity = Optional.empty();
    private final OldCooks oldCooks;
    private long markedNanos;
    private volatile Optional<Unrecorded> trouble = Optional.empty();
    private volatile boolean opened;
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
        this(file, opener, clock, KeepRules.EVERYTHING);
    }

    Recorder(Path file, Opener opener, Supplier<Moment> clock, KeepRules keep) {
        this.file = file;
        oldCooks = new OldCooks(keep);
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
        return open(file, KeepRules.EVERYTHING);
    }

    /**
     * A recorder at work that lets old cooks go.
     *
     * @param file the file of all cooks, which need not be there yet
     * @param keep what is kept of old cooks
     * @throws IllegalArgumentException if another program writes it
     */
    public static Recorder open(Path file, KeepRules keep) {
        try {
            Database.makeFolder(file);
        } catch (java.io.UncheckedIOException e) {
            LOG.debug("it will be said when nothing can be written", e);
        }
        return new Recorder(file, CookFile::open, Moment::now, keep);
    }

    /** Where the cooks of one pan are written; the pan's name is empty where there is one only. */
    public CookJournal journal(String pan) {
        return new PanJournal(pan, this);
    }

    /** Where something beside the cooks is written down, such as {@code jars}. */
    public Diary diary(String subject) {
        return new DiaryPen(subject, this);
    }

    /** The book of all cooks in the same file. */
    public BatchBook book() {
        return new BatchBook(file);
    }

    /** Why nothing can be written just now; empty if all is well. */
    public Optional<Unrecorded> trouble() {
        return trouble;
    }

    /** How many readings were dropped because memory was full. */
    public long dropped() {
        return inbox.dropped();
    }

    /** How many things could never be written, whatever the disk did, and were left out. */
    public long leftOut() {
        return batch.leftOut();
    }

    /** Whether its thread is at work. */
    public boolean healthy() {
        return thread.isAlive();
    }

    /** Whether the file could be opened since this began. */
    boolean opened() {
        return opened;
    }

    /** Whether readings are being lost because memory is full. */
    boolean losing() {
        return inbox.losing();
    }

    /** How many things wait to be written. */
    public int held() {
        return inbox.size();
    }

    /** Takes a reading, or drops it when memory is full. */
    void offerReading(Step step) {
        inbox.offerReading(step);
    }

    /** Takes a word or an event. */
    void offer(Step step) {
        inbox.offer(step);
    }

    /** Waits until all that was offered is on the disk; says whether it is. */
    boolean settle(Duration atMost) {
        return trouble.isEmpty() && thread.isAlive() && inbox.settle(atMost) && trouble.isEmpty();
    }

    /** Asks the file, on the recorder's thread; fails if it cannot be read. */
    <T> CompletableFuture<T> ask(Function<CookStore, T> question) {
        return healthy()
                ? inbox.ask(open -> question.apply(new CookStore(open.handle())))
                : CompletableFuture.failedFuture(new Inbox.NotOpenException());
    }

    /** Now, by the recorder's clocks. */
    Moment now() {
        return clock.get();
    }

    private void run() {
        try {
            commit();
            while (running) {
                List<Inbox.Settle> asked = collect();
                commit();
                asked.forEach(one -> one.done(Optional.ofNullable(database)));
                lookAfterOldCooks();
            }
            List<Inbox.Settle> last = inbox.all(batch.steps());
            commit();
            last.forEach(one -> one.done(Optional.ofNullable(database)));
        } catch (InterruptedException e) {
            LOG.debug("recorder interrupted; closing");
        } catch (RuntimeException | Error e) {
            LOG.error("the recorder stopped: nothing is written down any more", e);
            throw e;
        } finally {
            if (running) {
                trouble = Optional.of(STOPPED);
                inbox.all(batch.steps()).forEach(one -> one.done(Optional.empty()));
            }
            close(database);
            lock.close();
        }
    }

    /** Takes what comes until the next commit is due, or until somebody waits. While the file is in trouble the inbox holds it all. */
    private List<Inbox.Settle> collect() throws InterruptedException {
        long untilNanos = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(COMMIT_EVERY_MILLIS);
        List<Inbox.Settle> asked = inbox.collect(batch.steps(), MOST_AT_ONCE, untilNanos, () -> running);
        if (batch.steps().size() >= MOST_AT_ONCE && trouble.isPresent()) {
            TimeUnit.NANOSECONDS.sleep(Math.max(0, untilNanos - System.nanoTime()));
        }
        return asked;
    }

    private void lookAfterOldCooks() {
        Database open = database;
        if (open != null && trouble.isEmpty()) {
            oldCooks.look(open.handle());
        }
    }

    private void commit() {
        boolean markDue = System.nanoTime() - markedNanos > TimeUnit.MILLISECONDS.toNanos(MARK_EVERY_MILLIS);
        if (batch.steps().isEmpty() && database != null && !(markDue && !writers.isEmpty())) {
            return;
        }
        try {
            letGoOfAFileThatWasTakenAway();
            Database open = database == null ? reopened() : database;
            writers = batch.commit(open.handle(), writers);
            markedNanos = System.nanoTime();
            if (trouble.isPresent()) {
                LOG.warn("cooks are recorded again{}", inbox.lostWords());
                trouble = Optional.empty();
            }
        } catch (RuntimeException | SQLException e) {
            fail(e);
        }
    }

    /** A file that was moved or deleted would take everything and keep nothing. */
    private void letGoOfAFileThatWasTakenAway() {
        if (database != null && !FileIdentity.of(file).equals(identity)) {
            LOG.warn("{} was taken away while cooks were written into it; what follows goes into a new one", file);
            close(database);
            database = null;
        }
    }

    private Database reopened() throws SQLException {
        Database fresh = opener.open(file);
        database = fresh;
        opened = true;
        identity = FileIdentity.of(file);
        writers.values().forEach(Writer::fileChanged);
        return fresh;
    }

    private void fail(Exception e) {
        Fault fault = Fault.of(e);
        Unrecorded words = fault.words(file);
        if (!trouble.equals(Optional.of(words))) {
            LOG.warn("cooks are not recorded: {}. {}", words.why(), words.act());
            if (fault == Fault.FAILED) {
                LOG.warn("that is {}", e.toString()); // the words say little of it
            }
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
        inbox.wake();
        try {
            thread.join(5000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
