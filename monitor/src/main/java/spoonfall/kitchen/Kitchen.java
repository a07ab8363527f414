package spoonfall.kitchen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.CookJournal;
import spoonfall.log.CookRecord;
import spoonfall.probe.Probe;
import spoonfall.probe.hand.HandProbe;

/**
 * A kitchen at work on one pan: one thread, named {@code kitchen} and the pan, owns the cook. Probes only hand over readings;
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
    private final KitchenCounts counts;
    private final KitchenPlan plan;
    private final Function<LongSupplier, List<Probe>> opener;
    private final LongSupplier cookClock;
    private final Thermometry thermometry;
    private final Thermometers thermometers;
    private final CookJournal journal;
    private final Pan pan;
    private final AlarmDesk alarms;
    private final CheckDesk checks;
    private final HandDesk hands;
    private final TestDesk tests;
    private final TargetDesk targets;
    private final AfternoonDesk afternoon;
    private final PlanDesk plans;
    private final NoteDesk notes;
    private final Thread thread;
    private final List<KitchenListener> listeners = new ArrayList<>();
    private List<Probe> probes;
    private long repeatAtNanos = Long.MAX_VALUE;
    private final ClockWatch clocks;
    private long droppedTold;
    private long droppedNanos = System.nanoTime() - REPEAT_AFTER_NANOS;
    private volatile boolean running = true;
    private volatile boolean failed;

    /**
     * A kitchen that has not started.
     *
     * @param plan what it watches
     * @param opener opens its probes, which stamp readings with the clock it is given; the cook follows the first
     * @param nanoClock the monotonic clock of our own time
     */
    public Kitchen(KitchenPlan plan, Function<LongSupplier, List<Probe>> opener, LongSupplier nanoClock) {
        this(plan, opener, nanoClock, Thermometry.none());
    }

    /**
     * A kitchen that has not started and can check its thermometers.
     *
     * @param plan what it watches
     * @param opener opens its probes, which stamp readings with the clock it is given; the cook follows the first
     * @param nanoClock the monotonic clock of our own time
     * @param thermometry what is known of its thermometers
     */
    public Kitchen(
            KitchenPlan plan,
            Function<LongSupplier, List<Probe>> opener,
            LongSupplier nanoClock,
            Thermometry thermometry) {
        this(plan, opener, nanoClock, thermometry, CookJournal.none());
    }

    /**
     * A kitchen that has not started, can check its thermometers and writes its cooks down.
     *
     * @param plan what it watches
     * @param opener opens its probes, which stamp readings with the clock it is given; the cook follows the first
     * @param nanoClock the monotonic clock of our own time
     * @param thermometry what is known of its thermometers
     * @param journal where its cooks are written down, and where one that an earlier run left is found
     */
    public Kitchen(
            KitchenPlan plan,
            Function<LongSupplier, List<Probe>> opener,
            LongSupplier nanoClock,
            Thermometry thermometry,
            CookJournal journal) {
        this.plan = plan;
        this.journal = journal;
        this.opener = opener;
        long startNanos = nanoClock.getAsLong();
        cookClock = () -> startNanos + (long) ((nanoClock.getAsLong() - startNanos) * plan.speed());
        this.thermometry = thermometry;
        clocks = new ClockWatch(nanoClock);
        probes = opener.apply(cookClock);
        counts = new KitchenCounts(probes.stream().map(Probe::name).toList());
        thermometers = new Thermometers(plan, probes, thermometry);
        pan = new Pan(plan, thermometers, counts, journal, startNanos);
        afternoon = new AfternoonDesk(this, pan, this::tickNanos);
        plans = new PlanDesk(this, pan);
        alarms = new AlarmDesk(this, pan.alarms());
        checks = new CheckDesk(this, thermometers, pan);
        tests = new TestDesk(this, pan);
        targets = new TargetDesk(this, thermometers, pan);
        notes = new NoteDesk(this, pan);
        hands = new HandDesk(this, thermometers, pan);
        thread = new Thread(this::run, "kitchen " + plan.pan());
    }

    /** Starts watching. */
    public void start() {
        thread.start();
        startProbes();
    }

    /** What it watches. */
    public KitchenPlan plan() {
        return plan;
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

    /** Where its alarms are answered. */
    public AlarmDesk alarms() {
        return alarms;
    }

    /** Begins a new cook, which starts with the next reading. */
    public CompletableFuture<KitchenState> newCook() {
        return ask(() -> {
            beginCook(OptionalLong.of(tickNanos()));
            return pan.state();
        });
    }

    /** Where somebody says how far the afternoon is. */
    public AfternoonDesk afternoon() {
        return afternoon;
    }

    /** Where somebody says what batch is in the pan. */
    public PlanDesk plans() {
        return plans;
    }

    /** The clock by which its readings are stamped. */
    LongSupplier clock() {
        return cookClock;
    }

    /** Where its thermometers are checked, and where somebody says how high it lies. */
    public CheckDesk checks() {
        return checks;
    }

    /** Where readings are typed. */
    public HandDesk hands() {
        return hands;
    }

    /** The thermometer that somebody reads and that is called {@code name}. */
    Optional<HandProbe> handProbe(String name) {
        return probes.stream()
                .filter(probe -> probe.name().equals(name))
                .flatMap(probe -> probe instanceof HandProbe hand ? Stream.of(hand) : Stream.empty())
                .findFirst();
    }

    /** Where somebody says that they test the set, and what they saw. */
    public TestDesk tests() {
        return tests;
    }

    /** Where somebody takes a target for the pan. */
    public TargetDesk targets() {
        return targets;
    }

    /** Where notes are written. */
    public NoteDesk notes() {
        return notes;
    }

    /** Does something at this moment of the cook, tells what came of it, and answers with where everything stands. */
    CompletableFuture<KitchenState> asking(LongConsumer act) {
        return ask(() -> {
            act.accept(tickNanos());
            publish();
            return pan.state();
        });
    }

    /** Goes through the cook again, measured against what counts now. */
    KitchenState rebased() {
        pan.rebase(tickNanos());
        publish();
        return told();
    }

    /** A new cook of the same afternoon. */
    KitchenState afresh() {
        beginCook(OptionalLong.empty());
        return pan.state();
    }

    /** Tells every listener where everything stands. */
    KitchenState told() {
        KitchenState state = pan.state();
        tell(listener -> listener.begin(state));
        return state;
    }

    /** Stops watching and frees the probe. Returns when the kitchen's thread has ended. */
    @Override
    public void close() {
        running = false;
        probes.forEach(Probe::close);
        thread.interrupt();
        try {
            thread.join(2000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            resume();
            long nextTick = System.nanoTime();
            while (running) {
                long waitNanos = nextTick - System.nanoTime();
                Runnable task = inbox.poll(Math.max(0, waitNanos), TimeUnit.NANOSECONDS);
                if (task != null) {
                    for (Runnable next = task; next != null && running; next = inbox.poll()) {
                        noticeSleep(); // before what came after it
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

    /** Goes on with the cook that an earlier run left, if it is still the one in the pan. */
    private void resume() {
        pan.number(journal.lastNumber() + 1);
        pan.afternoon().recall(tickNanos());
        pan.batch().recall();
        journal.unfinished().ifPresent(left -> pan.comingBack().after(left, tickNanos()));
        pan.afternoon().caughtUp();
        publish();
        // What the probes said meanwhile is of many seconds: it does not wait for the record's next commit.
        for (Runnable next = inbox.poll(); next != null && running; next = inbox.poll()) {
            next.run();
        }
        publish();
        journal.settle();
    }

    /** Asked behind whatever was taken from the inbox: that may be of afterwards. */
    private void noticeSleep() {
        if (clocks.sleptS() > 0) {
            pan.comingBack().slept(nowNanos());
        }
    }

    private void tick() {
        noticeSleep();
        clocks.wallClockSet().ifPresent(pan::clockSet);
        if (counts.dropped() > droppedTold && System.nanoTime() - droppedNanos >= REPEAT_AFTER_NANOS) {
            pan.dropped(counts.dropped() - droppedTold);
            droppedTold = counts.dropped();
            droppedNanos = System.nanoTime();
        }
        if (System.nanoTime() - repeatAtNanos >= 0 && repeatAtNanos != Long.MAX_VALUE) {
            repeatAtNanos = Long.MAX_VALUE;
            probes.forEach(Probe::close);
            beginCook(OptionalLong.of(tickNanos()));
            probes = opener.apply(cookClock);
            startProbes();
        }
        pan.tick(tickNanos());
        publish();
    }

    /** Now, on the readings' scale. */
    long nowNanos() {
        return cookClock.getAsLong();
    }

    /** A little behind the clock, so that readings on their way are not overtaken. */
    long tickNanos() {
        long behindMillis = plan.source() == KitchenPlan.Source.LIVE ? TICK_MILLIS : REPLAY_BEHIND_MILLIS;
        return cookClock.getAsLong() - (long) (TimeUnit.MILLISECONDS.toNanos(behindMillis) * plan.speed());
    }

    private void beginCook(OptionalLong newAfternoonNanos) {
        pan.beginCook(newAfternoonNanos);
        KitchenState state = pan.state();
        tell(listener -> listener.begin(state));
    }

    /** Tells what is new. */
    void publish() {
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

    /** Asks the kitchen's thread. */
    <T> CompletableFuture<T> ask(Supplier<T> question) {
        return Asked.of(this::submit, question);
    }

    private void startProbes() {
        for (Probe probe : probes) {
            Thermometer thermometer = thermometers.named(probe.name());
            Runnable whenEnded = () -> {
                if (plan.repeat() && thermometer == thermometers.first()) {
                    repeatAtNanos = System.nanoTime() + REPEAT_AFTER_NANOS;
                }
            };
            probe.start(new ProbeEar(thermometer, thermometry, pan, counts, thread, inbox, whenEnded));
        }
    }
}
