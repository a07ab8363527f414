package spoonfall.kitchen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.CookAlarm;
import spoonfall.log.CookRecord;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * A kitchen at work: one thread, named {@code kitchen}, owns the cook. Probes only hand over readings;
 * listeners only take what they are given; whoever wants to know or change something asks that thread.
 */
public final class Kitchen implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Kitchen.class);
    private static final int QUEUE = 20_000;
    private static final long TICK_MILLIS = 200;

    /** In a replay a moment of ours is many seconds of the cook: a late thread must not look like a silent probe. */
    private static final long REPLAY_BEHIND_MILLIS = 1000;

    private static final long REPEAT_AFTER_NANOS = TimeUnit.SECONDS.toNanos(12);

    private final BlockingQueue<Runnable> inbox = new ArrayBlockingQueue<>(QUEUE);
    private final KitchenCounts counts = new KitchenCounts();
    private final KitchenPlan plan;
    private final Function<LongSupplier, Probe> probes;
    private final LongSupplier cookClock;
    private final Pan pan;
    private final Thread thread;
    private final List<KitchenListener> listeners = new ArrayList<>();
    private Probe probe;
    private long repeatAtNanos = Long.MAX_VALUE;
    private volatile boolean running = true;
    private volatile boolean failed;

    /**
     * A kitchen that has not started.
     *
     * @param plan what it watches
     * @param probes opens its probe, which stamps readings with the clock it is given
     * @param nanoClock the monotonic clock of our own time
     */
    public Kitchen(KitchenPlan plan, Function<LongSupplier, Probe> probes, LongSupplier nanoClock) {
        this.plan = plan;
        this.probes = probes;
        long startNanos = nanoClock.getAsLong();
        cookClock = () -> startNanos + (long) ((nanoClock.getAsLong() - startNanos) * plan.speed());
        probe = probes.apply(cookClock);
        pan = new Pan(plan, probe, counts);
        thread = new Thread(this::run, "kitchen");
    }

    /** Starts watching. */
    public void start() {
        thread.start();
        probe.start(new Ear());
    }

    /** What it has counted. */
    public KitchenCounts counts() {
        return counts;
    }

    /** Whether its thread is at work. */
    public boolean healthy() {
        return thread.isAlive() && !failed;
    }

    /** Adds a listener, which first hears where everything stands. */
    public void listen(KitchenListener listener) {
        withState(state -> {
            listener.begin(state);
            listeners.add(listener);
        });
    }

    /**
     * Runs {@code task} on the kitchen's thread with where everything stands at that moment: every change that
     * comes later has not been told to any listener yet.
     */
    public void withState(Consumer<KitchenState> task) {
        submit(() -> {
            publish();
            task.accept(pan.state());
        });
    }

    /** Where everything stands. */
    public CompletableFuture<KitchenState> state() {
        return ask(pan::state);
    }

    /** The readings of this cook so far. */
    public CompletableFuture<CookRecord> record() {
        return ask(pan::record);
    }

    /** Somebody says that they know of an alarm; empty if there never was one of that id. */
    public CompletableFuture<Optional<CookAlarm>> acknowledge(String id) {
        return ask(() -> {
            Optional<CookAlarm> alarm = pan.acknowledge(id, tickNanos());
            publish();
            return alarm;
        });
    }

    /** Begins a new cook, which starts with the next reading. */
    public CompletableFuture<KitchenState> newCook() {
        return ask(() -> {
            beginCook();
            return pan.state();
        });
    }

    /** Stops watching and frees the probe. Returns when the kitchen's thread has ended. */
    @Override
    public void close() {
        running = false;
        probe.close();
        thread.interrupt();
        try {
            thread.join(2000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            long nextTick = System.nanoTime();
            while (running) {
                long waitNanos = nextTick - System.nanoTime();
                Runnable task = inbox.poll(Math.max(0, waitNanos), TimeUnit.NANOSECONDS);
                if (task != null) {
                    task.run();
                    for (Runnable next = inbox.poll(); next != null && running; next = inbox.poll()) {
                        next.run();
                    }
                    publish();
                }
                if (System.nanoTime() - nextTick >= 0) {
                    nextTick = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(TICK_MILLIS);
                    tick();
                }
            }
        } catch (InterruptedException e) {
            LOG.debug("kitchen interrupted; closing");
        } catch (RuntimeException e) {
            LOG.error("the kitchen stopped watching", e);
            throw e;
        } finally {
            failed = running;
        }
    }

    private void tick() {
        if (System.nanoTime() - repeatAtNanos >= 0 && repeatAtNanos != Long.MAX_VALUE) {
            repeatAtNanos = Long.MAX_VALUE;
            probe.close();
            beginCook();
            probe = probes.apply(cookClock);
            probe.start(new Ear());
        }
        pan.tick(tickNanos());
        publish();
    }

    /** A little behind the clock, so that readings on their way are not overtaken. */
    private long tickNanos() {
        long behindMillis = plan.source() == KitchenPlan.Source.LIVE ? TICK_MILLIS : REPLAY_BEHIND_MILLIS;
        return cookClock.getAsLong() - (long) (TimeUnit.MILLISECONDS.toNanos(behindMillis) * plan.speed());
    }

    private void beginCook() {
        pan.beginCook();
        KitchenState state = pan.state();
        tell(listener -> listener.begin(state));
    }

    private void publish() {
        List<KitchenChange> changes = pan.takeChanges();
        changes.forEach(change -> tell(listener -> listener.changed(change)));
        pan.takeView().ifPresent(view -> tell(listener -> listener.pan(view)));
    }

    /** A listener that fails is said to, and neither the pan nor the others hear of it. */
    private void tell(Consumer<KitchenListener> news) {
        for (KitchenListener listener : listeners) {
            try {
                news.accept(listener);
            } catch (RuntimeException e) {
                LOG.error("{} could not take the news", listener.getClass().getSimpleName(), e);
            }
        }
    }

    private void submit(Runnable task) {
        if (!inbox.offer(task)) {
            throw new IllegalStateException("the kitchen is too busy to answer");
        }
    }

    private <T> CompletableFuture<T> ask(Supplier<T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        submit(() -> {
            try {
                answer.complete(question.get());
            } catch (RuntimeException e) {
                answer.completeExceptionally(e);
            }
        });
        return answer;
    }

    /** Hears the probe, on the probe's thread, and hands over. */
    private final class Ear implements ProbeListener {
        @Override
        public void reading(Reading reading) {
            counts.countReading(reading.quality() == Quality.GOOD);
            long heardNanos = System.nanoTime();
            if (!inbox.offer(() -> pan.accept(reading, heardNanos))) {
                counts.countDropped();
            }
        }

        @Override
        public void found(String name, String description, long atNanos) {
            LOG.info("{}: {}", name, description);
            hand(() -> pan.probeBecame(ProbeState.State.WAITING, description));
        }

        @Override
        public void lost(String name, String trouble, long atNanos) {
            LOG.warn("{}: {}", name, trouble);
            counts.countLoss();
            hand(() -> pan.probeBecame(ProbeState.State.LOST, trouble));
        }

        @Override
        public void ended(String name, long atNanos) {
            hand(() -> {
                pan.probeBecame(ProbeState.State.ENDED, "The recording is over.");
                if (plan.repeat()) {
                    repeatAtNanos = System.nanoTime() + REPEAT_AFTER_NANOS;
                }
            });
        }

        /** Waits for room: changes of the probe are few and none may be lost. */
        private void hand(Runnable task) {
            try {
                inbox.put(task);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
