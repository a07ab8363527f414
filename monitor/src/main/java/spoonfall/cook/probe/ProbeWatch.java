package spoonfall.cook.probe;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.probe.Quality;
import spoonfall.series.Selection;

/** Watches the thermometer rather than the pan: whether it speaks, and whether what it says can be. */
public final class ProbeWatch {
    /**
     * A radio or a loose plug loses some readings in a row now and then, and is back: in eight seconds a boiling pan climbs by hardly a
     * tenth of a degree.
     */
    private static final double SILENT_AFTER_S = 8;

    /** A thermometer whose pace is not known yet may be a slow one. */
    private static final double SILENT_AT_FIRST_S = 30;

    private static final double SILENT_AFTER_INTERVALS = 5;

    /** One that speaks only when its reading moves says nothing for so long while a pan is quiet. */
    private static final double SILENT_ON_CHANGE_S = 60;

    /** One of which that is not known yet is waited for as long as many take for a sign of life. */
    private static final double SILENT_MAYBE_ON_CHANGE_S = 35;

    /** What it said less than that ago needs no repeating. */
    private static final double HOLDS_S = 1;

    /** How much sooner they come makes no difference, and need not be worked out. */
    private static final double SOON_S = SILENT_AFTER_S / SILENT_AFTER_INTERVALS;

    private static final double MOVING_S = 10;

    /** Two who type within that time have looked at the thermometer once. */
    private static final double ONE_LOOK_S = 20;

    private final Plausibility plausibility;
    private final Stillness stillness = new Stillness();
    private final double[] intervals = new double[5];
    private final double[] sorted = new double[5];
    private final OnChange onChange = new OnChange();
    private int intervalCount;

    /** How many of the intervals are no longer than {@link #SOON_S}. */
    private int soon;

    private final Pace pace;
    private double silentAfterS;
    private double heardT = Double.NaN;
    private double listensSinceT;
    private double seenT = Double.NaN;
    private double seenC;
    private Quality latest = Quality.SILENT;
    private Stage regime = Stage.WAITING;
    private double warmingPerMinC;

    /** Of a probe that has not spoken yet, and will at such a pace. */
    public ProbeWatch(CookSettings settings, Pace pace) {
        this.pace = pace;
        silentAfterS = pace.shows() ? SILENT_AT_FIRST_S : Pace.silentByHandAtFirstS();
        plausibility = new Plausibility(settings.waterBoil().temperatureC());
    }

    /** Takes a good reading and says whether it tells something of the pan. */
    boolean accept(double t, double temperatureC, boolean boiling) {
        if (pace.shows()) {
            onChange.accept(t, temperatureC); // a hand types when somebody looks
        }
        learnInterval(t);
        heardT = t;
        latest = plausibility.judge(t, temperatureC, boiling);
        if (latest != Quality.GOOD) {
            return false;
        }
        stillness.accept(t, temperatureC);
        seenT = t;
        seenC = temperatureC;
        return true;
    }

    /** What it still shows, by saying nothing since; empty for one that would have said it again. */
    OptionalDouble heldC(double t) {
        boolean listened = heardT >= listensSinceT;
        boolean holds = onChange.seen() && listened && freshAt(t) && latest == Quality.GOOD && t - heardT > HOLDS_S;
        return holds ? OptionalDouble.of(seenC) : OptionalDouble.empty();
    }

    /** Takes note of a bad reading. */
    void acceptBad(Quality quality) {
        latest = quality;
        onChange.lost();
    }

    /** Nobody listened until {@code t}: what was not heard till then was not silence. */
    public void listenSince(double t) {
        listensSinceT = t;
    }

    /** The last reading that told something of the pan. */
    public Optional<CookStatus.Seen> seen() {
        return Double.isNaN(seenT) ? Optional.empty() : Optional.of(new CookStatus.Seen(seenT, seenC));
    }

    /** When that was; to be asked when there was one. */
    public double seenT() {
        return seenT;
    }

    /** Whether the thermometer still speaks. */
    boolean heardAt(double t) {
        return t - heardT <= silentAfterS;
    }

    /** Whether what it said last of the pan is fresh. */
    public boolean freshAt(double t) {
        return t - seenT <= silentAfterS;
    }

    /** When it was heard last; to be asked when it was. */
    public double heardT() {
        return heardT;
    }

    /** Since when the reading has been exactly the same. */
    public double sameSinceT() {
        return stillness.runSinceT();
    }

    /** How far the latest reading can be trusted, before anything is known of the alarms. */
    Quality latest(double t) {
        return heardAt(t) ? latest : Quality.SILENT;
    }

    /** What stillness teaches holds for one kind of movement only. */
    public void follow(Stage stage, double t) {
        boolean other = stage.boiling() != regime.boiling() || stage == Stage.OFF_THE_HEAT;
        if (stage == Stage.OFF_THE_HEAT && stage != regime) {
            stillness.away();
        } else if (stage != regime && other) {
            stillness.newRegime(stage.boiling());
        }
        regime = stage;
    }

    /** Takes note of how fast the pan climbs, in °C per minute, which a stuck reading would hide. */
    public void climbs(double perMinC) {
        if (stillness.runS() < MOVING_S) {
            warmingPerMinC = regime == Stage.WARMING ? Math.max(0, perMinC) : 0;
        }
    }

    /** Takes note of the smallest step that the thermometer has shown, where nothing is known of the pan's pace. */
    void steps(double stepC) {
        stillness.expect(OptionalDouble.empty(), () -> 0, stepC);
    }

    /** The reading may be stuck, so that nothing should be made of its standing still. */
    public boolean suspectStuck() {
        return pace.shows() && stillness.suspect();
    }

    /** Whether the reading was suspect and then went on from where it stood, so that it was the pan that stood. */
    boolean wentOn() {
        return stillness.wentOn();
    }

    /** Runs the alarms of the thermometer. */
    void watch(
            double t,
            AlarmBoard board,
            OptionalDouble expectedPerMinC,
            DoubleSupplier growsPerMin,
            double stepC,
            List<CookEvent> events) {
        boolean listened = t - listensSinceT > silentAfterS || board.present(AlarmName.PROBE_SILENT);
        Condition silent = Condition.when(t - heardT > silentAfterS && listened);
        board.update(t, AlarmName.PROBE_SILENT, silent, () -> AlarmText.probeSilent(heardT, pace), events);
        Condition implausible = heardAt(t) ? plausibility.implausible(t) : Condition.ABSENT;
        board.update(
                t,
                AlarmName.PROBE_IMPLAUSIBLE,
                implausible,
                () -> AlarmText.probeImplausible(plausibility.jumpedUpC()),
                events);
        OptionalDouble warmingC = regime == Stage.WARMING ? OptionalDouble.of(warmingPerMinC) : expectedPerMinC;
        stillness.expect(warmingC, regime == Stage.WARMING ? () -> 0 : growsPerMin, stepC);
        boolean inThePan = !board.present(AlarmName.PROBE_OUT_OF_PAN);
        if (!inThePan) {
            stillness.away(); // the air is quieter than a pan
        } else if (regime.boiling()) {
            stillness.boils();
        }
        Condition stuck = Condition.when(pace.shows() && heardAt(t) && inThePan && stillness.stuck());
        board.update(
                t, AlarmName.PROBE_STUCK, stuck, () -> AlarmText.probeStuck(stillness.runSinceT(), regime), events);
    }

    private void learnInterval(double t) {
        double sinceS = t - heardT;
        if (Double.isNaN(sinceS) || (!pace.shows() && sinceS < ONE_LOOK_S)) {
            return;
        }
        int at = intervalCount++ % intervals.length;
        soon += (sinceS <= SOON_S ? 1 : 0) - (intervalCount > intervals.length && intervals[at] <= SOON_S ? 1 : 0);
        intervals[at] = sinceS;
        if (intervalCount > 1) {
            silentAfterS = pace.shows() ? silentAfterS() : Pace.silentByHandAfterS(usualS());
        }
    }

    private double silentAfterS() {
        double leastS = leastSilentS();
        boolean usuallySoon = 2 * soon > Math.min(intervalCount, intervals.length);
        return usuallySoon ? leastS : Math.max(leastS, SILENT_AFTER_INTERVALS * usualS());
    }

    private double leastSilentS() {
        if (onChange.seen()) {
            return SILENT_ON_CHANGE_S;
        }
        return onChange.maybe() ? SILENT_MAYBE_ON_CHANGE_S : SILENT_AFTER_S;
    }

    private double usualS() {
        System.arraycopy(intervals, 0, sorted, 0, intervals.length);
        return Selection.median(sorted, Math.min(intervalCount, intervals.length));
    }
}
