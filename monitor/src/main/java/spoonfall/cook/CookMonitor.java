package spoonfall.cook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Alarm;
import spoonfall.alarm.Condition;
import spoonfall.estimate.PanPrior;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * Watches one cook: takes readings, tells stages, alarms and the forecast.
 *
 * <p>Pure. Time is what the readings and the caller say, rounded to the millisecond so that a trace written
 * with three decimals gives the same cook again. Everything is judged at whole seconds of the cook, in
 * order, whether or not anyone asks: calling {@link #advanceTo} often, seldom or never between two readings
 * gives the same events.
 *
 * <p>Not safe for use by several threads.
 */
public final class CookMonitor {
    /** Seconds of the cook between two status events. */
    public static final int STATUS_EVERY_S = 10;

    /** The longest time in minutes for which an alarm can be put aside. */
    public static final int MOST_MINUTES_ASIDE = (int) (Alarm.LONGEST_SHELF_S / 60);

    /** What climbs too fast is held back by so much below the gel point until it is seen whether it is real. */
    private static final double NOT_YET_C = 0.05;

    /** A reading so far below the latest height has fallen, in °C. */
    private static final double FELL_C = 0.5;

    /** Reminders need no forecast more often than that, in seconds. */
    private static final double REMIND_EVERY_S = 10;

    private final long originNanos;
    private final CookSettings settings;
    private final Senses senses;
    private final Pace pace;
    private final Stages stages;
    private final Forecaster forecaster;
    private final AlarmBoard board = new AlarmBoard();
    private final PanAlarms alarms;
    private final SetTests tests;
    private final Reminders reminders = new Reminders();
    private final ProbeWatch probe;
    private final OutOfPan leaving;
    private final List<SecondProbe> others;

    private long nowMillis;
    private long lastSecond = -1;
    private Optional<Signals> signals = Optional.empty();
    private boolean misledLately;
    private Optional<Unrecorded> unrecorded = Optional.empty();

    /**
     * A cook in which nothing has happened.
     *
     * @param settings what it is measured against
     * @param originNanos the instant, on the readings' scale, at which the cook's seconds begin
     */
    public CookMonitor(CookSettings settings, long originNanos) {
        this(settings, originNanos, List.of());
    }

    /**
     * A cook in which nothing has happened, with several probes in the pan.
     *
     * @param settings what it is measured against
     * @param originNanos the instant, on the readings' scale, at which the cook's seconds begin
     * @param probes what is known of them; the first is the one that the cook follows
     */
    public CookMonitor(CookSettings settings, long originNanos, List<ProbeTrust> probes) {
        this.settings = settings;
        others = probes.stream()
                .skip(1)
                .map(other -> new SecondProbe(settings, probes.get(0), other))
                .toList();
        this.originNanos = originNanos;
        pace = probes.isEmpty() ? Pace.BY_ITSELF : probes.get(0).pace();
        senses = new Senses(pace);
        stages = new Stages(settings);
        forecaster = new Forecaster(settings, pace);
        tests = new SetTests(settings);
        alarms = new PanAlarms(settings, board, stages, forecaster, tests, pace);
        probe = new ProbeWatch(settings, pace);
        leaving = new OutOfPan(settings.waterBoil().temperatureC());
    }

    /**
     * Takes what a plan of the batch says of the pan. To be said before it boils, and again in its place by whoever replays
     * the cook; later it counts from the next boil on.
     */
    public void expect(PanPrior prior) {
        forecaster.expect(prior);
    }

    /** What the cook is measured against. */
    public CookSettings settings() {
        return settings;
    }

    /** Seconds of the cook up to which it has been watched. */
    public double timeS() {
        return nowMillis / 1000.0;
    }

    /**
     * Takes a reading and returns what came of it and of the time since the last one, in order. A reading
     * older than {@link #timeS()} counts as of now. A bad one only lets time pass.
     */
    public List<CookEvent> accept(Reading reading) {
        List<CookEvent> events = advanceTo(reading.atNanos());
        if (reading.quality() == Quality.GOOD) {
            double temperatureC = reading.temperatureC().orElseThrow();
            if (probe.accept(timeS(), temperatureC, stages.stage().boiling() && !outOfPan())) {
                senses.accept(temperatureC);
                leaving.accept(timeS(), temperatureC);
                forecaster.accept(timeS(), temperatureC);
            }
        } else {
            probe.acceptBad(reading.quality());
        }
        return events;
    }

    /**
     * Takes a reading of another probe in the same pan, which is compared with the one that the cook follows and
     * changes nothing else. No time passes with it.
     *
     * @throws IllegalArgumentException if no such probe was named at the beginning
     */
    public void compare(Reading reading) {
        double t = Math.max(0, millisAt(reading.atNanos())) / 1000.0;
        other(reading.probe()).accept(t, reading, stages.stage().boiling());
    }

    /** The temperature of another probe in the same pan; empty when nothing fresh is known of it. */
    public OptionalDouble otherTemperatureC(String name) {
        return other(name).temperatureC(timeS());
    }

    /** How far the latest reading of another probe in the same pan can be trusted. */
    public Quality otherQuality(String name) {
        return other(name).quality(timeS());
    }

    private SecondProbe other(String name) {
        return others.stream()
                .filter(probe -> probe.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no other probe is called " + name));
    }

    /** Lets time pass without a reading and returns what came of it. Earlier times change nothing. */
    public List<CookEvent> advanceTo(long atNanos) {
        nowMillis = Math.max(nowMillis, millisAt(atNanos));
        List<CookEvent> events = new ArrayList<>();
        while ((lastSecond + 1) * 1000 <= nowMillis) {
            lastSecond++;
            endSecond(lastSecond, events);
        }
        return events;
    }

    private long millisAt(long atNanos) {
        return Math.floorDiv(atNanos - originNanos + 500_000, 1_000_000L);
    }

    /**
     * Goes on after nobody watched since {@link #timeS()}. The time between is not judged: no probe was silent in it, for
     * nobody listened, and every alarm stands as it stood.
     *
     * @param atNanos when the watch goes on; an earlier time counts as {@link #timeS()}
     */
    public List<CookEvent> comeBack(long atNanos) {
        double leftT = timeS();
        long nextSecondNanos = originNanos + (lastSecond + 1) * 1_000_000_000L;
        List<CookEvent> events = advanceTo(Math.min(atNanos, nextSecondNanos));
        nowMillis = Math.max(nowMillis, millisAt(atNanos));
        lastSecond = Math.max(lastSecond, nowMillis / 1000);
        probe.listenSince(timeS());
        others.forEach(other -> other.listenSince(timeS()));
        events.add(new CookEvent.CameBack(timeS(), timeS() - leftT));
        return events;
    }

    /**
     * Whether the cook is written down, as whoever writes it says.
     *
     * @param trouble why it is not; empty if it is
     */
    public List<CookEvent> recording(Optional<Unrecorded> trouble, long atNanos) {
        List<CookEvent> events = advanceTo(atNanos);
        unrecorded = trouble;
        return events;
    }

    /**
     * Somebody says that they know of an alarm.
     *
     * @return the alarm afterwards and what changed; empty if no alarm ever had that id. Acknowledging again
     *     changes nothing.
     */
    public Optional<Answer> acknowledge(String id, long atNanos) {
        List<CookEvent> events = advanceTo(atNanos);
        return board.acknowledge(timeS(), id, events).map(alarm -> new Answer(alarm, events));
    }

    /**
     * Somebody puts an alarm aside: it neither calls nor counts until its time is up, and then stands as its condition
     * does. Putting it aside again sets its time anew; one that is suppressed is left as it is.
     *
     * @param minutes for how long, 1 to {@link #MOST_MINUTES_ASIDE}
     * @return the alarm afterwards and what changed; empty if no alarm has that id now
     * @throws IllegalArgumentException if it is for no time or for too long
     */
    public Optional<Answer> shelve(String id, int minutes, long atNanos) {
        if (minutes < 1 || minutes > MOST_MINUTES_ASIDE) {
            throw new IllegalArgumentException(
                    "an alarm can be put aside for 1 to %d minutes, not %d".formatted(MOST_MINUTES_ASIDE, minutes));
        }
        List<CookEvent> events = advanceTo(atNanos);
        return board.shelve(timeS(), id, 60.0 * minutes, events).map(alarm -> new Answer(alarm, events));
    }

    /**
     * Somebody takes back an alarm that was put aside.
     *
     * @return the alarm afterwards and what changed; empty if no alarm ever had that id. Taking back what is not put
     *     aside changes nothing.
     */
    public Optional<Answer> unshelve(String id, long atNanos) {
        List<CookEvent> events = advanceTo(atNanos);
        return board.unshelve(timeS(), id, events).map(alarm -> new Answer(alarm, events));
    }

    /**
     * Somebody says something about a set test; {@link TestWord} says what that may be. While the pan is tested nobody is
     * called to test it, nor because it cools. "Not yet" aims the cook at the rise that was learnt, "set" ends the boil.
     *
     * @return what came of it and of the time that passed
     */
    public List<CookEvent> say(TestWord word, long atNanos) {
        List<CookEvent> events = advanceTo(atNanos);
        CookSettings before = tests.aim();
        boolean wasSet = tests.set();
        tests.say(timeS(), nowMillis, word, panForATest()).ifPresent(events::add);
        if (tests.set() != wasSet) {
            // what the readings do meanwhile is not the pan's way to its set
            misledLately = true;
            enter(timeS(), tests.set() ? stages.end() : stages.goOn(), events);
        }
        if (!tests.aim().equals(before)) {
            alarms.aim(timeS(), tests.aim(), events);
            forecaster.aim(tests.aim());
            enter(timeS(), stages.aim(tests.aim()), events);
        }
        tests.endSecond(timeS(), board, events);
        alarms.suppress(timeS(), events);
        return events;
    }

    /** How the set tests stand. */
    public SetTestsNow tests() {
        OptionalDouble nextInS = status().forecast().isPresent()
                ? forecaster.untilS(timeS(), tests.nextRiseC())
                : OptionalDouble.empty();
        return new SetTestsNow(tests.all(), tests.aim(), tests.nextRiseC(), nextInS);
    }

    /** Says to another monitor of the same readings, in their place among them, what was said to this one. */
    public Retelling retelling(CookMonitor other) {
        return new Retelling(tests.said(), other, originNanos);
    }

    private void enter(double t, boolean changed, List<CookEvent> events) {
        if (changed) {
            events.add(new CookEvent.StageEntered(t, stages.stage()));
        }
    }

    /** The pan as it came off the heat: whoever says so a little late finds the reading falling already. */
    private SetTests.Pan panForATest() {
        if (signals.isEmpty() || !probe.freshAt(timeS()) || misled()) {
            return new SetTests.Pan(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
        Signals now = signals.get();
        boolean fell = stages.stage() == Stage.OFF_THE_HEAT || now.peakC() - now.levelC() > FELL_C;
        double temperatureC = forecaster.boiledAtC(timeS(), fell ? now.peakC() : now.trendC());
        double riseC = temperatureC - settings.waterBoil().temperatureC();
        double solids = forecaster.solids(Math.max(0, riseC));
        return new SetTests.Pan(
                OptionalDouble.of(temperatureC),
                OptionalDouble.of(solids),
                forecaster.expectedPerMinC(riseC).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    /**
     * What came of somebody's word on an alarm.
     *
     * @param alarm the alarm afterwards
     * @param events what happened, with that which came of the time that passed
     */
    public record Answer(CookAlarm alarm, List<CookEvent> events) {}

    /** The alarms that are neither normal nor suppressed, most urgent first. */
    public List<CookAlarm> alarms() {
        return board.standing();
    }

    /** How the pan is now. */
    public CookStatus status() {
        double t = timeS();
        boolean fresh = probe.freshAt(t);
        Optional<Signals> live = fresh ? signals : Optional.empty();
        boolean boiling = stages.stage().boiling();
        OptionalDouble level = live.map(s -> OptionalDouble.of(s.levelC())).orElse(OptionalDouble.empty());
        OptionalDouble rate = live.flatMap(Signals::steady)
                .map(line -> OptionalDouble.of(Signals.perMinute(line)))
                .orElse(OptionalDouble.empty());
        OptionalDouble solids = live.filter(s -> boiling)
                .map(s -> OptionalDouble.of(
                        forecaster.solids(s.trendC() - settings.waterBoil().temperatureC())))
                .orElse(OptionalDouble.empty());
        boolean climbing = boiling && fresh && !tests.paused() && !board.present(AlarmName.STALLED) && !misled();
        Optional<Forecast> forecast = climbing ? forecaster.forecast(t) : Optional.empty();
        return new CookStatus(
                t,
                level,
                quality(t),
                probe.seen(),
                stages.stage(),
                rate,
                solids,
                forecast,
                fresh && alarms.coldAdded());
    }

    private void endSecond(long second, List<CookEvent> events) {
        double t = second;
        board.pass(t, events);
        signals = senses.endSecond(t);
        tests.endSecond(t, board, events);
        probe.watch(
                t,
                board,
                expectedPerMinC(),
                forecaster::growsPerMin,
                signals.map(Signals::stepC).orElse(1.0),
                events);
        if (signals.isPresent() && probe.freshAt(t) && !tests.set()) {
            watchPan(t, signals.get(), events);
        }
        alarms.suppress(t, events);
        Condition lost = Condition.when(unrecorded.isPresent());
        board.update(t, AlarmName.NOT_RECORDING, lost, () -> AlarmText.notRecording(unrecorded.orElseThrow()), events);
        if (signals.isPresent()) {
            compareProbes(t, signals.get(), events);
        }
        if (second % STATUS_EVERY_S == 0) {
            events.add(new CookEvent.StatusTaken(statusAt(t)));
        }
    }

    private void compareProbes(double t, Signals now, List<CookEvent> events) {
        Stage stage = stages.stage();
        Condition apart = Condition.ABSENT;
        Optional<SecondProbe> contrary = Optional.empty();
        for (SecondProbe other : others) {
            Condition condition = other.compare(t, now, stage);
            if (condition == Condition.PRESENT && contrary.isEmpty()) {
                contrary = Optional.of(other);
            }
            apart = condition.compareTo(apart) < 0 ? condition : apart;
        }
        Optional<SecondProbe> said = contrary;
        board.update(
                t, AlarmName.PROBES_DISAGREE, apart, () -> said.orElseThrow().text(stage, quality(t)), events);
    }

    /** The status as of the whole second {@code t}, which may lie before {@link #timeS()}. */
    private CookStatus statusAt(double t) {
        long later = nowMillis;
        nowMillis = Math.round(t * 1000);
        CookStatus status = status();
        nowMillis = later;
        return status;
    }

    /** How fast the pan should be moving just now, whatever the reading does. */
    private OptionalDouble expectedPerMinC() {
        if (signals.isEmpty() || !stages.stage().boiling()) {
            return OptionalDouble.empty();
        }
        double levelC = signals.get().levelC();
        double panC = forecaster.panC(timeS()).orElse(levelC);
        if (Math.abs(levelC - panC) > pace.agreesC() + Math.min(1, signals.get().stepC())) {
            return OptionalDouble.empty(); // the pan is not where it is thought to be
        }
        double riseC = levelC - settings.waterBoil().temperatureC();
        return forecaster.expectedPerMinC(riseC).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** How far the latest reading can be trusted, with what the alarms know. */
    private Quality quality(double t) {
        Quality latest = probe.latest(t);
        if (latest != Quality.GOOD) {
            return latest;
        }
        if (outOfPan()) {
            return Quality.OUT_OF_PAN;
        }
        return board.present(AlarmName.PROBE_STUCK) ? Quality.STUCK : Quality.GOOD;
    }

    private void watchPan(double t, Signals now, List<CookEvent> events) {
        Condition out = pace.shows() ? leaving.judge(t, stages.stage(), now, forecaster.panC(t)) : Condition.ABSENT;
        board.update(t, AlarmName.PROBE_OUT_OF_PAN, out, () -> AlarmText.probeOutOfPan(now), events);
        if (out == Condition.PRESENT || misled()) {
            misledLately = true;
            forecaster.skip();
            return;
        }
        if (misledLately) {
            misledLately = false;
            senses.restart();
            alarms.restart();
            reminders.restart();
            return;
        }
        if (probe.caughtUp()) {
            forecaster.skip();
        }
        double knownC = knownC(t, now);
        boolean misleads = alarms.misledByTheBase(t);
        boolean early =
                !stages.stage().atOrPastGelPoint() && (misleads || (pace.shows() && forecaster.climbsTooFast(now)));
        boolean far = misleads && stages.stage() == Stage.ROLLING_BOIL;
        double mostC = far ? tests.aim().windowFromC() : tests.aim().gelPointC();
        Signals known = now.withTrend(early ? Math.min(knownC, mostC - NOT_YET_C) : knownC);
        if (forecaster.misledUpwards()) {
            known = known.withoutPeak();
            senses.forgetPeak(t);
        }
        boolean boiled = stages.stage().boiling();
        if (stages.follow(known)) {
            if (!pace.shows() && !boiled && stages.stage().boiling()) {
                senses.newRegime(); // its lines are minutes long, and would hold the way up to the boil
            }
            events.add(new CookEvent.StageEntered(t, stages.stage()));
        }
        probe.follow(stages.stage(), t);
        now.steady().ifPresent(line -> probe.climbs(Signals.perMinute(line)));
        boolean back = forecaster.back(now);
        if (tests.paused(t, back)) {
            forecaster.pause(t, back);
        } else {
            forecaster.endSecond(now, stages.stage(), stages.boilingForS(t));
        }
        alarms.endSecond(t, known, probe.suspectStuck(), events);
        remind(t, now, events);
    }

    /** Where the pan is by all that is known; that it went on too far must be read, not only foreseen. */
    private double knownC(double t, Signals now) {
        double readT = probe.seen().map(CookStatus.Seen::t).orElse(t);
        double knownC = forecaster.temperatureC(pace.carriedT(t, readT), now.trendC());
        double foreseenC = settings.gelPointC() + PastGelPoint.MARGIN_C - NOT_YET_C;
        return pace.shows() ? knownC : Math.min(knownC, Math.max(now.levelC(), foreseenC));
    }

    private void remind(double t, Signals now, List<CookEvent> events) {
        Stage stage = stages.stage();
        boolean climbs = stage.boiling() && !stage.atOrPastGelPoint() && !board.present(AlarmName.STALLED);
        boolean ask = climbs && t % REMIND_EVERY_S == 0;
        double riseC = now.trendC() - settings.waterBoil().temperatureC();
        double solids = climbs ? forecaster.solids(riseC) : 0;
        reminders.endSecond(now, stage, solids, ask ? forecaster.forecast(t) : Optional.empty(), events);
    }

    private boolean outOfPan() {
        return board.present(AlarmName.PROBE_OUT_OF_PAN);
    }

    /** What the probe says is not the pan's temperature. */
    private boolean misled() {
        return outOfPan() || board.present(AlarmName.PROBE_STUCK) || board.present(AlarmName.PROBE_IMPLAUSIBLE);
    }
}
