package spoonfall.kitchen;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import spoonfall.kitchen.again.LeftBehind;
import spoonfall.kitchen.again.PanReturn;
import spoonfall.kitchen.clock.ClockWatch;
import spoonfall.kitchen.desk.AfternoonDesk;
import spoonfall.kitchen.desk.AlarmDesk;
import spoonfall.kitchen.desk.CheckDesk;
import spoonfall.kitchen.desk.Desks;
import spoonfall.kitchen.desk.HandDesk;
import spoonfall.kitchen.desk.NoteDesk;
import spoonfall.kitchen.desk.PlanDesk;
import spoonfall.kitchen.desk.TargetDesk;
import spoonfall.kitchen.desk.TestDesk;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.log.CookJournal;
import spoonfall.log.CookRecord;
import spoonfall.probe.Probe;

/**
 * A kitchen at work on one pan: one thread, named {@code kitchen} and the pan, owns the cook. Probes only hand over readings;
 * listeners only take what they are given; whoever wants to know or change something asks that thread.
 */
public final class Kitchen implements AutoCloseable {
    private static final long DROPPED_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(12);

    private final KitchenProbes probes;
    private final KitchenCounts counts;
    private final KitchenPlan plan;
    private final LongSupplier cookClock;
    private final Thermometry thermometry;
    private final Thermometers thermometers;
    private final CookJournal journal;
    private final Pan pan;
    private final PanReturn comingBack;
    private final LeftBehind leftBehind;
    private final KitchenThread thread;
    private final PanKeeper keeper;
    private final Desks desks;
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
        comingBack = new PanReturn(pan, plan, thermometers);
        thread = new KitchenThread("kitchen " + plan.pan(), new Work(), PanKeeper.TICK_MILLIS);
        keeper = new PanKeeper(plan, pan, cookClock, thread::submit);
        leftBehind = new LeftBehind(pan, journal, comingBack, keeper::tickNanos);
        desks = new Desks(plan, keeper, pan, thermometers, check, probes::byHand);
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

    /** Whether what writes its cooks down is at work; a disk in trouble is told of by an alarm. */
    public boolean recorded() {
        return journal.healthy();
    }

    /** Adds a listener, which first hears where everything stands. */
    public void listen(KitchenListener listener) {
        keeper.listen(listener);
    }

    /**
     * Runs {@code task} on the kitchen's thread with where everything stands at that moment: every change that
     * comes later has not been told to any listener yet.
     */
    public void withState(Consumer<KitchenState> task) {
        keeper.withState(task);
    }

    /** Where everything stands. */
    public CompletableFuture<KitchenState> state() {
        return keeper.state();
    }

    /** The readings of this cook so far. */
    public CompletableFuture<CookRecord> record() {
        return keeper.record();
    }

    /** Where its alarms are answered. */
    public AlarmDesk alarms() {
        return desks.alarms();
    }

    /** Begins a new cook, which starts with the next reading; the same tap begins one, however often it arrives. */
    public CompletableFuture<KitchenState> newCook(Optional<String> tap) {
        thread.submit(leftBehind::anotherBegins);
        return keeper.newCook(tap);
    }

    /** Where somebody says how far the afternoon is. */
    public AfternoonDesk afternoon() {
        return desks.afternoon();
    }

    /** Where somebody says what batch is in the pan. */
    public PlanDesk plans() {
        return desks.plans();
    }

    /** The clock by which its readings are stamped. */
    LongSupplier clock() {
        return cookClock;
    }

    /** Where its thermometers are checked, and where somebody says how high it lies. */
    public CheckDesk checks() {
        return desks.checks();
    }

    /** Where readings are typed. */
    public HandDesk hands() {
        return desks.hands();
    }

    /** Where somebody says that they test the set, and what they saw. */
    public TestDesk tests() {
        return desks.tests();
    }

    /** Where somebody takes a target for the pan. */
    public TargetDesk targets() {
        return desks.targets();
    }

    /** Where notes are written. */
    public NoteDesk notes() {
        return desks.notes();
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
        leftBehind.takeUp();
        keeper.publish();
        // What the probes said meanwhile is of many seconds: it does not wait for the record's next commit.
        thread.doWaiting();
        keeper.publish();
        journal.settle();
    }

    /** Asked behind whatever was taken from the inbox: that may be of afterwards. */
    private void noticeSleep() {
        if (clocks.sleptS() > 0) {
            comingBack.slept(keeper.nowNanos());
        }
    }

    private void tick() {
        noticeSleep();
        if (leftBehind.takeUp()) {
            keeper.told();
        }
        clocks.wallClockSet().ifPresent(pan::clockSet);
        if (counts.dropped() > droppedTold && System.nanoTime() - droppedNanos >= DROPPED_AGAIN_NANOS) {
            pan.dropped(counts.dropped() - droppedTold);
            droppedTold = counts.dropped();
            droppedNanos = System.nanoTime();
        }
        if (probes.repeatDue()) {
            probes.close();
            keeper.beginAnew();
            probes.reopen();
            probes.start(this::ear);
        }
        pan.tick(keeper.tickNanos());
        keeper.publish();
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
            keeper.publish();
        }

        @Override
        public void tick() {
            Kitchen.this.tick();
        }
    }
}
