package spoonfall.cook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
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

    private static final double SILENT_AFTER_S = 5;
    private static final double SILENT_AFTER_INTERVALS = 4;

    private final long originNanos;
    private final CookSettings settings;
    private final Senses senses = new Senses();
    private final Stages stages;
    private final Forecaster forecaster;
    private final Watches watches;
    private final AlarmBoard board = new AlarmBoard();
    private final double[] intervals = new double[5];
    private int intervalCount;
    private double silentAfterS = SILENT_AFTER_S;

    private long nowMillis;
    private long lastSecond = -1;
    private Optional<CookStatus.Seen> seen = Optional.empty();
    private Optional<Signals> signals = Optional.empty();

    /**
     * A cook in which nothing has happened.
     *
     * @param settings what it is measured against
     * @param originNanos the instant, on the readings' scale, at which the cook's seconds begin
     */
    public CookMonitor(CookSettings settings, long originNanos) {
        this.settings = settings;
        this.originNanos = originNanos;
        stages = new Stages(settings);
        forecaster = new Forecaster(settings);
        watches = new Watches(settings);
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
            learnInterval();
            senses.accept(temperatureC);
            seen = Optional.of(new CookStatus.Seen(timeS(), temperatureC));
        }
        return events;
    }

    /** Lets time pass without a reading and returns what came of it. Earlier times change nothing. */
    public List<CookEvent> advanceTo(long atNanos) {
        nowMillis = Math.max(nowMillis, Math.floorDiv(atNanos - originNanos + 500_000, 1_000_000L));
        List<CookEvent> events = new ArrayList<>();
        while ((lastSecond + 1) * 1000 <= nowMillis) {
            lastSecond++;
            endSecond(lastSecond, events);
        }
        return events;
    }

    /**
     * Somebody says that they know of an alarm.
     *
     * @return the alarm afterwards and what changed; empty if no alarm ever had that id. Acknowledging again
     *     changes nothing.
     */
    public Optional<Acknowledgement> acknowledge(String id, long atNanos) {
        List<CookEvent> events = advanceTo(atNanos);
        return board.acknowledge(timeS(), id, events).map(alarm -> new Acknowledgement(alarm, events));
    }

    /**
     * What came of an acknowledgement.
     *
     * @param alarm the alarm afterwards
     * @param events what happened, with that which came of the time that passed
     */
    public record Acknowledgement(CookAlarm alarm, List<CookEvent> events) {}

    /** The alarms that are not normal, most urgent first. */
    public List<CookAlarm> alarms() {
        return board.standing();
    }

    /** How the pan is now. */
    public CookStatus status() {
        double t = timeS();
        boolean fresh = heardAt(t);
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
        boolean climbing = boiling && fresh && !board.active(AlarmName.STALLED) && !outOfPan();
        Optional<Forecast> forecast = climbing ? forecaster.forecast(t) : Optional.empty();
        return new CookStatus(t, level, seen, stages.stage(), rate, solids, forecast);
    }

    private void endSecond(long second, List<CookEvent> events) {
        double t = second;
        signals = senses.endSecond(t);
        watchProbe(t, events);
        if (signals.isPresent() && heardAt(t)) {
            watchPan(t, signals.get(), events);
        }
        if (second % STATUS_EVERY_S == 0) {
            events.add(new CookEvent.StatusTaken(statusAt(t)));
        }
    }

    /** The status as of the whole second {@code t}, which may lie before {@link #timeS()}. */
    private CookStatus statusAt(double t) {
        long later = nowMillis;
        nowMillis = Math.round(t * 1000);
        CookStatus status = status();
        nowMillis = later;
        return status;
    }

    private void watchProbe(double t, List<CookEvent> events) {
        Condition silent = Condition.when(seen.isPresent() && !heardAt(t));
        board.update(
                t,
                AlarmName.PROBE_SILENT,
                silent,
                () -> AlarmText.probeSilent(seen.orElseThrow().t()),
                events);
    }

    private void watchPan(double t, Signals now, List<CookEvent> events) {
        boolean wasOut = outOfPan();
        Condition out = watches.probeOutOfPan(stages.stage(), now);
        board.update(t, AlarmName.PROBE_OUT_OF_PAN, out, () -> AlarmText.probeOutOfPan(now), events);
        if (out == Condition.PRESENT || outOfPan()) {
            return;
        }
        if (wasOut) {
            senses.restart();
            forecaster.restart();
            return;
        }
        if (stages.follow(now)) {
            events.add(new CookEvent.StageEntered(t, stages.stage()));
        }
        forecaster.observe(now, stages.boilingForS(t));
        raiseAlarms(t, now, events);
    }

    private void raiseAlarms(double t, Signals now, List<CookEvent> events) {
        Stage stage = stages.stage();
        Condition past = Condition.when(stage == Stage.PAST_GEL_POINT);
        board.update(t, AlarmName.PAST_GEL_POINT, past, AlarmText::pastGelPoint, events);
        Condition gel = Condition.when(stage == Stage.AT_GEL_POINT && !board.active(AlarmName.PAST_GEL_POINT));
        board.update(t, AlarmName.GEL_POINT, gel, () -> AlarmText.gelPoint(settings), events);
        Condition window = board.everRaised(AlarmName.GEL_POINT) ? Condition.ABSENT : watches.startSetTests(stage, now);
        board.update(t, AlarmName.START_SET_TESTS, window, AlarmText::startSetTests, events);
        Condition stalled = watches.stalled(stages, now);
        boolean cooling = stage == Stage.OFF_THE_HEAT;
        board.update(t, AlarmName.STALLED, stalled, () -> AlarmText.stalled(settings, now, cooling), events);
        Condition scorch = watches.scorchRisk(stages, now, forecaster);
        board.update(t, AlarmName.SCORCH_RISK, scorch, AlarmText::scorchRisk, events);
        if (board.active(AlarmName.PAST_GEL_POINT)) {
            board.supersede(t, AlarmName.GEL_POINT, events);
        }
        if (board.active(AlarmName.GEL_POINT) || board.active(AlarmName.PAST_GEL_POINT)) {
            board.supersede(t, AlarmName.START_SET_TESTS, events);
        }
    }

    private boolean outOfPan() {
        return board.active(AlarmName.PROBE_OUT_OF_PAN);
    }

    private boolean heardAt(double t) {
        return seen.isPresent() && t - seen.get().t() <= silentAfterS;
    }

    private void learnInterval() {
        if (seen.isEmpty()) {
            return;
        }
        intervals[intervalCount++ % intervals.length] = timeS() - seen.get().t();
        if (intervalCount >= intervals.length) {
            double[] sorted = Arrays.copyOf(intervals, intervals.length);
            silentAfterS = Math.max(SILENT_AFTER_S, SILENT_AFTER_INTERVALS * RobustLine.median(sorted, sorted.length));
        }
    }
}
