package spoonfall.cook.monitor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Alarm;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Pace;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.TestWord;
import spoonfall.cook.Unrecorded;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.pan.PanWatch;
import spoonfall.cook.probe.OtherProbes;
import spoonfall.cook.probe.PanProbe;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.estimate.warming.PanPrior;
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

    private final long originNanos;
    private final CookSettings settings;
    private final AlarmBoard board = new AlarmBoard();
    private final PanWatch pan;
    private final PanTalk talk;
    private final OtherProbes others;

    private long nowMillis;
    private long lastSecond = -1;
    private Optional<Unrecorded> unrecorded = Optional.empty();
    private Optional<CalmForecast> calm = Optional.empty();
    private Optional<CalmForecast.Shown> foretold = Optional.empty();

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
        this.originNanos = originNanos;
        pan = new PanWatch(
                settings, probes.isEmpty() ? Pace.BY_ITSELF : probes.get(0).pace(), board);
        talk = new PanTalk(pan, board);
        others = new OtherProbes(settings, probes);
    }

    /**
     * Takes what a plan of the batch says of the pan. To be said before it boils, and again in its place by whoever replays
     * the cook; later it counts from the next boil on.
     */
    public void expect(PanPrior prior) {
        pan.expect(prior);
    }

    /**
     * From now on it says what to tell of the forecast. Whoever tells nobody does without: to forecast anew every second costs
     * more than all else that is done in it.
     */
    public void foretell() {
        calm = Optional.of(new CalmForecast());
        settle(timeS());
    }

    /**
     * The forecast as it is to be told, in seconds of the cook: settled at the end of every second and after every word on a set test, so
     * that all who tell of it say the same, live or again. Empty when there is none, or nobody asked to have it foretold.
     */
    public Optional<CalmForecast.Shown> foretold() {
        return foretold;
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
        pan.accept(timeS(), reading);
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
        others.accept(t, reading, pan.stages().stage().boiling());
    }

    /** The temperature of another probe in the same pan; empty when nothing fresh is known of it. */
    public OptionalDouble otherTemperatureC(String name) {
        return others.temperatureC(name, timeS());
    }

    /** How far the latest reading of another probe in the same pan can be trusted. */
    public Quality otherQuality(String name) {
        return others.quality(name, timeS());
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
        pan.probe().watch().listenSince(timeS());
        settle(timeS());
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
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "an alarm can be put aside for 1 to %d minutes, not %d", MOST_MINUTES_ASIDE, minutes));
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
        CookSettings before = pan.tests().aim();
        talk.say(timeS(), nowMillis, word, events);
        if (!pan.tests().aim().equals(before)) {
            calm = calm.map(old -> new CalmForecast()); // what was told was of another rise
        }
        settle(timeS());
        return events;
    }

    /** How the set tests stand. */
    public SetTestsNow tests() {
        return talk.tests(timeS());
    }

    /** Says to another monitor of the same readings, in their place among them, what was said to this one. */
    public Retelling retelling(CookMonitor other) {
        return new Retelling(pan.tests().said(), other, originNanos);
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
        return pan.status(timeS());
    }

    private void endSecond(long second, List<CookEvent> events) {
        double t = second;
        board.pass(t, events);
        pan.endSecond(t, events);
        Condition lost = Condition.when(unrecorded.isPresent());
        board.update(t, AlarmName.NOT_RECORDING, lost, () -> AlarmText.notRecording(unrecorded.orElseThrow()), events);
        if (!others.none()) {
            PanProbe probe = pan.probe();
            probe.signals()
                    .ifPresent(now -> others.compare(t, now, pan.stages().stage(), probe.quality(t), board, events));
        }
        if (second % STATUS_EVERY_S == 0) {
            events.add(new CookEvent.StatusTaken(pan.status(t)));
        }
        settle(t);
    }

    private void settle(double t) {
        foretold = calm.flatMap(settled -> settled.settle(t, pan.forecast(t), talk.nextInS(t)));
    }
}
