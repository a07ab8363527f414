package spoonfall.cook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.probe.Reading;

/**
 * A whole cook whose readings are drawn by hand, one a second. Water boils at 100 °C and the preserve sets at 104 °C, as in
 * {@link MadePan}.
 */
public final class MadeCook {
    private final CookMonitor monitor;
    private final List<CookEvent> events = new ArrayList<>();
    private int t;

    private MadeCook(CookSettings settings, ProbeTrust probe) {
        monitor = new CookMonitor(settings, 0, List.of(probe));
    }

    /** A cook in which nothing was read yet. */
    public static MadeCook begun() {
        return begun(MadePan.SETTINGS);
    }

    /** The same of another preserve. */
    public static MadeCook begun(CookSettings settings) {
        return new MadeCook(settings, ProbeTrust.unchecked("pan"));
    }

    /** The same with a thermometer that somebody reads by hand. */
    public static MadeCook byHand() {
        return new MadeCook(MadePan.SETTINGS, ProbeTrust.byHand("pan"));
    }

    /** A pan that has been boiling for so many seconds. */
    public static MadeCook boiling(int seconds) {
        return begun().watch(seconds, MadeCook::boilsC);
    }

    /** Where a pan boils that began 1.5 °C above water and climbs by 0.1 °C a minute, with its bubbles. */
    public static double boilsC(double t) {
        return 101.5 + MadePan.CLIMBS_PER_MIN_C * t / 60 + 0.02 * Math.sin(1.7 * t);
    }

    /** Lets so many seconds pass, with a reading at the beginning of each, by the second of the cook. */
    public MadeCook watch(int seconds, DoubleUnaryOperator readC) {
        for (int i = 0; i < seconds; i++) {
            events.addAll(monitor.accept(Reading.good("pan", nanos(), readC.applyAsDouble(t), "")));
            t++;
        }
        events.addAll(monitor.advanceTo(nanos()));
        return this;
    }

    /** Lets so many seconds pass without a reading. */
    public MadeCook silent(int seconds) {
        t += seconds;
        events.addAll(monitor.advanceTo(nanos()));
        return this;
    }

    /** Somebody types what it shows every so many seconds, until {@code untilS}. */
    public MadeCook typed(int everyS, int untilS, DoubleUnaryOperator shownC) {
        while (t < untilS) {
            watch(1, shownC).silent(everyS - 1);
        }
        return this;
    }

    /** What a thermometer shows whose marks are half a degree apart. */
    public static DoubleUnaryOperator coarse(DoubleUnaryOperator readC) {
        return t -> Math.rint(2 * readC.applyAsDouble(t)) / 2;
    }

    /** Somebody says something of a set test. */
    public MadeCook say(TestWord word) {
        events.addAll(monitor.say(word, nanos()));
        return this;
    }

    public long nanos() {
        return t * 1_000_000_000L;
    }

    int t() {
        return t;
    }

    /** The alarm of that name, which stands. */
    public CookAlarm alarm(AlarmName name) {
        return monitor.alarms().stream()
                .filter(alarm -> alarm.name() == name)
                .findFirst()
                .orElseThrow();
    }

    public CookMonitor monitor() {
        return monitor;
    }

    public CookStatus status() {
        return monitor.status();
    }

    /** Everything that happened. */
    public List<CookEvent> events() {
        return events;
    }

    /** What happened since {@code sinceT}. */
    public List<CookEvent> eventsSince(double sinceT) {
        return events.stream().filter(event -> event.t() >= sinceT).toList();
    }

    public List<AlarmName> raised() {
        return Cooks.raised(events);
    }

    /** What was raised since {@code sinceT}. */
    public List<AlarmName> raisedSince(double sinceT) {
        return Cooks.raised(eventsSince(sinceT));
    }
}
