package spoonfall.kitchen.canner;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.canner.CannerAlarm;
import spoonfall.canner.CannerEvent;
import spoonfall.canner.CannerPhase;
import spoonfall.canner.CannerTap;
import spoonfall.canner.CannerView;
import spoonfall.canner.CannerWatch;
import spoonfall.canner.JarLoad;
import spoonfall.canner.NotNow;
import spoonfall.canner.Seal;
import spoonfall.kitchen.ask.Questions;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.clock.ClockWatch;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.probe.Reading;

/**
 * Where filled jars are watched: one thread, named {@code canner}, owns the watch. Its time is monotonic, so that a wall
 * clock that is set, or daylight saving, moves nothing; the wall clock is only shown. What cannot be done now ends in a
 * {@link Refusal}, and else the answer is how the jars stand. The thread begins with the first thing it is told.
 */
public final class CannerDesk implements CannerListener, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(CannerDesk.class);
    private static final int QUEUE = 2000;
    private static final long TICK_MILLIS = 200;
    private static final long RECALL_NANOS = TimeUnit.SECONDS.toNanos(2);
    private static final long TELL_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final BlockingQueue<Runnable> inbox = new ArrayBlockingQueue<>(QUEUE);
    private final List<Consumer<News>> listeners = new ArrayList<>();
    private final JarDiary diary;
    private final ClockWatch clocks;
    private CannerWatch watch = new CannerWatch();
    private final LongSupplier nanoClock;
    private final InstantSource wallClock;
    private long startNanos;
    private final Thread thread = new Thread(this::run, "canner");
    private boolean changed;
    private boolean unwritten;
    private boolean recalled;
    private long recallNanos = System.nanoTime();
    private long toldNanos = System.nanoTime();
    private final AtomicBoolean begun = new AtomicBoolean();
    private volatile boolean running = true;
    private volatile boolean failed;

    /**
     * How the jars stand, with the wall clock at second 0 of the watch's scale: only for showing a time of day.
     *
     * @param view how they stand
     * @param zeroAt that wall clock, as it is set now, in whole seconds
     */
    public record News(CannerView view, Instant zeroAt) {}

    /**
     * A desk that has heard of nothing yet.
     *
     * @param nanoClock the monotonic clock that also stamps the readings of the canner's thermometer
     * @param wallClock the time of day, for showing
     */
    public CannerDesk(LongSupplier nanoClock, InstantSource wallClock) {
        this(nanoClock, wallClock, Diary.none(), 1);
    }

    /**
     * A desk that goes on with the jars that an earlier run left.
     *
     * @param diary where they are found, and how they stand is written down
     * @param speed how many seconds of theirs pass in one of ours
     */
    public CannerDesk(LongSupplier nanoClock, InstantSource wallClock, Diary diary, double speed) {
        this.nanoClock = nanoClock;
        this.wallClock = wallClock;
        this.diary = new JarDiary(diary, speed);
        clocks = new ClockWatch(nanoClock);
        startNanos = nanoClock.getAsLong();
    }

    /** Whether its thread goes on. */
    public boolean healthy() {
        return !failed;
    }

    /** The canner's thermometer was read; a reading without a temperature is none. Any thread; hands over. */
    @Override
    public void reading(Reading reading) {
        reading.temperatureC().ifPresent(c -> {
            if (!offer(() -> hear(reading.atNanos(), c))) {
                LOG.debug("a reading of the canner was dropped; the canner's thread is behind");
            }
        });
    }

    private void hear(long atNanos, double temperatureC) {
        noticeSleep();
        note(watch.accept(seconds(atNanos), temperatureC));
    }

    /** It cannot be read any more: the watch finds out by its silence, whatever the reason. */
    @Override
    public void lost(String trouble) {
        LOG.debug("the canner's thermometer is lost: {}", trouble);
    }

    /** Hears how the jars stand: at once, then with every change, and every second while there are jars. */
    public void listen(Consumer<News> listener) {
        submit(() -> {
            listeners.add(listener);
            tell(listener, news());
        });
    }

    /** How the jars stand. */
    public CompletableFuture<News> state() {
        return ask(() -> {
            note(watch.advanceTo(now()));
            keep();
            return news();
        });
    }

    /** Jars go into the canner; {@code tap} names the tap, so that one that arrives twice counts once. */
    public CompletableFuture<News> load(String tap, JarLoad load) {
        return told(() -> watch.load(now(), tap, load));
    }

    /** Somebody says something by one tap. */
    public CompletableFuture<News> tap(String tap, CannerTap does) {
        return told(() -> watch.tap(now(), tap, does));
    }

    /** Somebody looked at the lid of a jar of a load, both counted from 1. */
    public CompletableFuture<News> seal(String tap, int load, int jar, Seal seal) {
        return told(() -> watch.seal(now(), tap, load, jar, seal));
    }

    /** Somebody put a load away. */
    public CompletableFuture<News> putAway(String tap, int load) {
        return told(() -> watch.putAway(now(), tap, load));
    }

    /** Takes the tap of that mark back; nothing happens if another one is the last. */
    public CompletableFuture<News> undo(long mark) {
        return told(() -> watch.undo(now(), mark));
    }

    /** Somebody knows of an alarm; empty if there never was one of that id. */
    public CompletableFuture<Optional<CannerAlarm>> acknowledge(String id) {
        return ask(() -> {
            List<CannerEvent> events = new ArrayList<>();
            Optional<CannerAlarm> alarm = watch.acknowledge(now(), id, events);
            note(events);
            keep();
            return alarm;
        });
    }

    /** Ends its thread. */
    @Override
    public void close() {
        running = false;
        thread.interrupt();
        try {
            thread.join(2000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private CompletableFuture<News> told(Supplier<List<CannerEvent>> act) {
        return ask(() -> {
            try {
                note(act.get());
            } catch (NotNow e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
            keep();
            return news();
        });
    }

    private <T> CompletableFuture<T> ask(Supplier<T> question) {
        return Questions.ask(this::submit, question);
    }

    private void submit(Runnable task) {
        if (!offer(task)) {
            throw new IllegalStateException("the canner's thread is too busy to answer");
        }
    }

    private boolean offer(Runnable task) {
        if (begun.compareAndSet(false, true)) {
            thread.setDaemon(true);
            thread.start();
        }
        return inbox.offer(task);
    }

    private void run() {
        try {
            recall();
            while (running) {
                Runnable task = inbox.poll(TICK_MILLIS, TimeUnit.MILLISECONDS);
                double passed = now(); // before the inbox is emptied: no reading that waits in it is overtaken
                for (; task != null; task = inbox.poll()) {
                    task.run();
                }
                note(watch.advanceTo(passed));
                keep();
                publish();
                recall();
            }
        } catch (InterruptedException e) {
            LOG.debug("the canner's thread was interrupted; closing");
        } catch (RuntimeException | Error e) {
            LOG.error("nobody watches the canner any more; restart Spoonfall", e);
            throw e;
        } finally {
            failed = running;
        }
    }

    /** Asks for the jars that an earlier run left until the record says what that was: they may be in the middle of their time. */
    private void recall() {
        if (recalled || System.nanoTime() - recallNanos < 0) {
            return;
        }
        Recalled<CannerWatch> left = diary.left();
        recalled = left.known();
        recallNanos = System.nanoTime() + RECALL_NANOS;
        left.found().ifPresent(this::goOn);
    }

    /** The watch's scale goes on where it was. */
    private void goOn(CannerWatch left) {
        watch = left;
        startNanos = nanoClock.getAsLong() - Math.round(left.view().t() * 1e9);
        changed = true;
        unwritten = true;
    }

    private void note(List<CannerEvent> events) {
        changed |= !events.isEmpty();
        unwritten |= !events.isEmpty();
    }

    /** Writes down what changed, before anybody is told of it. */
    private void keep() {
        if (unwritten) {
            unwritten = false;
            diary.changed(watch.memory());
        } else {
            diary.alive(now());
        }
    }

    private void publish() {
        if (!changed && System.nanoTime() - toldNanos < TELL_NANOS) {
            return;
        }
        News news = news();
        boolean still =
                news.view().phase() == CannerPhase.EMPTY && news.view().shelf().isEmpty();
        if (changed || !still) {
            listeners.forEach(listener -> tell(listener, news));
        }
        changed = false;
        toldNanos = System.nanoTime();
    }

    private static void tell(Consumer<News> listener, News news) {
        try {
            listener.accept(news);
        } catch (RuntimeException e) {
            LOG.error("a listener could not take the news of the jars", e);
        }
    }

    private News news() {
        CannerView view = watch.view();
        long zeroS = Math.round(wallClock.millis() / 1000.0 - view.t());
        return new News(view, Instant.ofEpochSecond(zeroS));
    }

    private double now() {
        long nowNanos = nanoClock.getAsLong();
        noticeSleep();
        return seconds(nowNanos);
    }

    /** What boiled while the machine slept is in doubt, before the watch hears of the time that passed. */
    private void noticeSleep() {
        double sleptS = clocks.sleptS();
        if (sleptS > 0) {
            note(watch.away(sleptS));
        }
    }

    private double seconds(long atNanos) {
        return (atNanos - startNanos) / 1e9;
    }
}
