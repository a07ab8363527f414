package spoonfall.cook.pan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Forecast;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.cook.watch.ColdAddition;
import spoonfall.cook.watch.Standstill;
import spoonfall.cook.watch.Watches;
import spoonfall.series.Track;

/** Runs the alarms of the pan: when each is so. */
public final class PanAlarms {
    /** So long the reading takes to come down to the pan after its base was hotter. */
    private static final double HOT_S = 180;

    /** What was foreseen so long ago a fault of the last minutes has not touched. */
    private static final double FORESEEN_S = 120;

    /** The gel point does not come so much sooner than it was foreseen at the soonest. */
    private static final double SOONER_S = 120;

    private static final double SOONEST_PART = 0.65;

    private static final List<AlarmName> CALLS_TO_TEST =
            List.of(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);

    private CookSettings settings;
    private final Pace pace;
    private final AlarmBoard board;
    private final Stages stages;
    private final Forecaster forecaster;
    private final SetTests tests;
    private final Watches watches;
    private final Standstill standstill = new Standstill();
    private final ColdAddition cold;
    private final SugarIn sugar;
    private final Suppressions suppressions;
    private final UnseenWindow unseen;
    private final Track soonestGelT = new Track(2 * FORESEEN_S);
    private final Shifted shifted = new Shifted();
    private boolean setTest;
    private boolean windowUnseen;
    private double hotT = Double.NEGATIVE_INFINITY;
    private double aimedT = Double.NEGATIVE_INFINITY;

    PanAlarms(
            CookSettings settings,
            AlarmBoard board,
            Stages stages,
            Forecaster forecaster,
            SetTests tests,
            Pace pace,
            UnseenWindow unseen,
            SugarIn sugar) {
        this.sugar = sugar;
        this.pace = pace;
        this.unseen = unseen;
        this.settings = settings;
        this.board = board;
        this.stages = stages;
        this.forecaster = forecaster;
        this.tests = tests;
        watches = new Watches(settings);
        cold = new ColdAddition(settings.waterBoil().temperatureC());
        suppressions = new Suppressions(board, stages, tests, sugar, cold);
    }

    /** The gel point is another one from now on: what was called for the old one is settled. */
    public void aim(double t, CookSettings aim, List<CookEvent> events) {
        settings = aim;
        aimedT = t;
        watches.aim(aim);
        unseen.forget();
        soonestGelT.clear();
        callsAreOver(t, events);
    }

    private void callsAreOver(double t, List<CookEvent> events) {
        for (AlarmName name : CALLS_TO_TEST) {
            board.over(t, name, events);
        }
    }

    /** Whether two minutes ago the gel point was foreseen no sooner than in two minutes from {@code t}. */
    boolean foreseenLater(double t) {
        return soonestGelT.valueAt(t - FORESEEN_S).orElse(0) > t + SOONER_S;
    }

    /** Whether something cold went in and the pan is on its way back. */
    boolean coldAdded() {
        return cold.seen();
    }

    /** The reading has jumped to where it is now. */
    void jumped(Signals now, Jumped.Shift shift) {
        double agreesC = pace.agreesC() + now.knownStepC();
        shifted.jumped(shift, now.t(), agreesC, forecaster);
    }

    /** Forgets the way here: what comes does not go on from it. */
    void restart() {
        soonestGelT.clear();
        watches.restart();
        standstill.restart();
        cold.restart();
        shifted.restart();
        setTest = false;
    }

    /** Ends a second in which the pan was seen; {@code warmsAgain} whether it had fallen and is on its way back to the boil. */
    void endSecond(double t, Signals now, boolean suspectStuck, boolean warmsAgain, List<CookEvent> events) {
        Stage stage = stages.stage();
        standstill.endSecond(now);
        if (board.present(AlarmName.SCORCH_RISK) || forecaster.misledUpwards()) {
            hotT = t;
        }
        watches.hotter(t - hotT < HOT_S);
        cold.endSecond(now, stages);
        shifted.endSecond(now, forecaster.noiseC());
        setTest = watches.setTest(stages, now, forecaster);
        if (tests.notYet()) {
            watches.notSet();
        }
        suppress(t, events);
        Condition past = Condition.when(stage == Stage.PAST_GEL_POINT);
        double pastC = now.trendC() - settings.gelPointC();
        board.update(t, AlarmName.PAST_GEL_POINT, past, () -> AlarmText.pastGelPoint(pastC), events);
        Condition gel = Condition.when(stage == Stage.AT_GEL_POINT && !board.present(AlarmName.PAST_GEL_POINT));
        board.update(t, AlarmName.GEL_POINT, gel, () -> AlarmText.gelPoint(settings), events);
        Condition seen = windowUnseen ? Condition.UNDECIDED : watches.startSetTests(stage, now);
        Condition window = gelCalled() ? Condition.ABSENT : seen;
        board.update(t, AlarmName.START_SET_TESTS, window, AlarmText::startSetTests, events);
        if (stage == Stage.OFF_THE_HEAT && !setTest && !windowUnseen) {
            callsAreOver(t, events); // who took it off for longer than a test has heard them
        }
        Condition stalled =
                suspectStuck ? Condition.UNDECIDED : watches.stalled(stages, now, setTest, gelCalled(), forecaster);
        if (warmsAgain) {
            stalled = Condition.ABSENT; // somebody saw to it
        }
        if (cold.stalls()) {
            stalled = Condition.PRESENT;
        }
        boolean cooling = stage == Stage.OFF_THE_HEAT || forecaster.cools() || watches.cools(now);
        board.update(t, AlarmName.STALLED, stalled, () -> stallText(now, cooling), events);
        boolean scorched = board.present(AlarmName.SCORCH_RISK);
        Condition scorch = pace.shows()
                ? watches.scorchRisk(stages, now, forecaster, cold.seen() || sugar.going())
                : Condition.ABSENT;
        board.update(t, AlarmName.SCORCH_RISK, scorch, watches::scorchText, events);
        if (!scorched && board.present(AlarmName.SCORCH_RISK)) {
            forecaster.doubtTheLastMinute();
        }
    }

    private AlarmText stallText(Signals now, boolean cooling) {
        if (cold.stalls()) {
            return cold.text(now);
        }
        if (gelCalled()) {
            return standstill.shortText(now, settings.gelPointC() - now.trendC());
        }
        return cooling ? standstill.coolingText(now, likely()) : standstill.standingText(now);
    }

    private AlarmText.Cooling likely() {
        if (tests.goesBack()) {
            return AlarmText.Cooling.WAS_NOT_SET;
        }
        return stages.reachedWindow() ? AlarmText.Cooling.MAY_BE_SET : AlarmText.Cooling.HEAT_IS_OFF;
    }

    /** Takes note of what is foreseen while the pan is seen: nothing, where it does not climb. */
    void foresee(double t, Optional<Forecast> forecast) {
        if (sugar.mayGo(t)) {
            unseen.forget();
            soonestGelT.clear();
            return;
        }
        unseen.seen(t, forecast);
        if (shifted.sinceT(t).isEmpty()) {
            soonestGelT.add(t, t + forecast.map(PanAlarms::soonestS).orElse(Double.NEGATIVE_INFINITY));
        }
    }

    /** An interval grows wide where readings surprise, which a fault does: in much less than the time foreseen no pan is there. */
    private static double soonestS(Forecast forecast) {
        return Math.max(forecast.lowS(), SOONEST_PART * forecast.etaS());
    }

    /** Ends a second, whether or not the pan was seen: what was known of it before says when to begin the set tests. */
    void endSecond(double t, List<CookEvent> events) {
        OptionalDouble shiftedT = shifted.sinceT(t);
        OptionalDouble sinceT = unseen.openSinceT(t, pace.noticesS(), shiftedT);
        boolean notThere = stages.stage() == Stage.ROLLING_BOIL || (shiftedT.isPresent() && !stages.reachedWindow());
        windowUnseen = pace.shows() && notThere && sinceT.isPresent();
        suppress(t, events);
        if (windowUnseen && !gelCalled()) {
            board.update(
                    t,
                    AlarmName.START_SET_TESTS,
                    Condition.PRESENT,
                    () -> shiftedT.equals(sinceT)
                            ? AlarmText.startSetTestsShifted(sinceT.getAsDouble())
                            : AlarmText.startSetTestsUnseen(sinceT.getAsDouble()),
                    events);
        }
    }

    /** Suppresses what means nothing by now; to be called when a second has ended, whether or not the pan was seen. */
    public void suppress(double t, List<CookEvent> events) {
        suppressions.judge(t, setTest, windowUnseen, gelCalled(), events);
    }

    /** Whether the gel point was called. */
    boolean gelCalled() {
        return board.raisedSince(aimedT, AlarmName.GEL_POINT);
    }
}
