package spoonfall.kitchen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import spoonfall.log.CookJournal;
import spoonfall.log.CookRecord;
import spoonfall.probe.Probe;
import spoonfall.probe.hand.HandProbe;

/**
 * A kitchen at work on one pan: one thread, named {@code kitchen} and the pan, owns the cook. Probes only hand over readings;
 * listeners only take what they are given; whoever wants to know or change something asks that thread.
 */
public final class Kitchen implements AutoCloseable {
    private static final long TICK_MILLIS = 200;

    /** In a replay a moment of ours is many seconds of the cook: a late thread must not look like a silent probe. */
    private static final long REPLAY_BEHIND_MILLIS = 1000;

    private static final long DROPPED_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(12);

    private final KitchenProbes probes;
    private final KitchenCounts counts;
    private final KitchenPlan plan;
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
    private final KitchenThread thread;
    private final Audience audience = new Audience();
    private final ClockWatch clocks;
    private long droppedTold;
    private long droppedNanos = System.nanoTime() - DROPPED_AGAIN_NANOS;

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
        long startNanos = nanoClock.getAsLong();
        cookClock = () -> startNanos + (long) ((nanoClock.getAsLong() - startNanos) * plan.speed());
        this.thermometry = thermometry;
        clocks = new ClockWatch(nanoClock);
        probes = new KitchenProbes(() -> opener.apply(cookClock));
        counts = new KitchenCounts(probes.all().stream().map(Probe::name).toList());
        thermometers = new Thermometers(plan, probes.all(), thermometry);
        ThermometerCheck check = new ThermometerCheck(plan, thermometry, thermometers);
        pan = new Pan(plan, thermometers, check, counts, journal, startNanos);
        afternoon = new AfternoonDesk(this, pan, this::tickNanos);
        plans = new PlanDesk(this, pan);
        alarms = new AlarmDesk(this, pan.alarms());
        checks = new CheckDesk(this, thermometers, check, pan);
        tests = new TestDesk(this, pan);
        targets = new TargetDesk(this, thermometers, pan);
        notes = new NoteDesk(this, pan);
        hands = new HandDesk(this, thermometers, pan);
        thread = new KitchenThread("kitchen " + plan.pan(), new Work(), TICK_MILLIS);
    }

    /** Starts watching. */
    public void start() {
        thread.start();
        probes.start(this::ear);
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
        return thread.healthy();
    }

    /** Adds a listener, which first hears where everything stands. */
    public void listen(KitchenListener listener) {
        withState(state -> audience.join(listener, state));
    }

    /**
     * Runs {@code task} on the kitchen's thread with where everything stands at that moment: every change that
     * comes later has not been told to any listener yet.
     */
    public void withState(Consumer<KitchenState> task) {
        thread.submit(() -> {
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
        return probes.byHand(name);
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
        audience.tell(listener -> listener.begin(state));
        return state;
    }

    /** Stops watching and frees the probe. Returns when the kitchen's thread has ended. */
    @Override
    public void close() {
        thread.stop();
        probes.close();
        thread.close();
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
        thread.doWaiting();
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
        if (counts.dropped() > droppedTold && System.nanoTime() - droppedNanos >= DROPPED_AGAIN_NANOS) {
            pan.dropped(counts.dropped() - droppedTold);
            droppedTold = counts.dropped();
            droppedNanos = System.nanoTime();
        }
        if (probes.repeatDue()) {
            probes.close();
            beginCook(OptionalLong.of(tickNanos()));
            probes.reopen();
            probes.start(this::ear);
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
        audience.tell(listener -> listener.begin(state));
    }

    /** Tells what is new. */
    void publish() {
        List<KitchenChange> changes = pan.takeChanges();
        changes.forEach(change -> audience.tell(listener -> listener.changed(change)));
        pan.takeView().ifPresent(view -> audience.tell(listener -> listener.pan(view)));
    }

    /** Asks the kitchen's thread. */
    <T> CompletableFuture<T> ask(Supplier<T> question) {
        return thread.ask(question);
    }

    private ProbeEar ear(Probe probe) {
        Thermometer thermometer = thermometers.named(probe.name());
        Runnable whenEnded = () -> {
            if (plan.repeat() && thermometer == thermometers.first()) {
                probes.repeatLater();
            }
        };
        return new ProbeEar(thermometer, thermometry, pan, counts, thread, whenEnded);
    }

    /** What the thread does of itself. */
    private final class Work implements KitchenThread.Work {
        @Override
        public void begin() {
            resume();
        }

        @Override
        public void beforeTask() {
            noticeSleep(); // before what came after it
        }

        @Override
        public void afterTasks() {
            publish();
        }

        @Override
        public void tick() {
            Kitchen.this.tick();
        }
    }
}
