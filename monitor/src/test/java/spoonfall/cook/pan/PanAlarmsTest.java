package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.probe.ProbeWatch;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.settest.TestAnswer;

/** When the alarms of the pan are raised and what they say, by signals made by hand. */
final class PanAlarmsTest {
    private static final CookSettings SETTINGS = MadePan.SETTINGS;

    private final AlarmBoard board = new AlarmBoard();
    private final SetTests tests = new SetTests(SETTINGS);
    private final List<CookEvent> events = new ArrayList<>();
    private final Stages stages = new Stages(SETTINGS);
    private Forecaster forecaster = new Forecaster(SETTINGS, Pace.BY_ITSELF);
    private PanAlarms alarms = alarms(Pace.BY_ITSELF);
    private double t;

    private PanAlarms alarms(Pace pace) {
        return new PanAlarms(SETTINGS, board, stages, forecaster, tests, pace, unseen(pace), noSugar());
    }

    private static SugarIn noSugar() {
        return new SugarIn(SETTINGS.waterBoil().temperatureC());
    }

    private UnseenWindow unseen(Pace pace) {
        return new UnseenWindow(board, new ProbeWatch(SETTINGS, pace));
    }

    /** The same with what is known of a pan. */
    private void know(Forecaster known) {
        forecaster = known;
        alarms = alarms(Pace.BY_ITSELF);
    }

    private static Forecaster standsStill() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        assertThat(still.still() && !still.cools()).isTrue();
        return still;
    }

    /** Lets seconds pass in which the stage follows what is seen. */
    private void watch(int seconds, DoubleFunction<Signals> signals) {
        for (int i = 0; i < seconds; i++) {
            stages.follow(signals.apply(t));
            second(signals.apply(t), false);
        }
    }

    private void stand(int seconds, double c) {
        watch(seconds, at -> MadeSignals.at(at, c));
    }

    private void second(Signals now, boolean suspectStuck) {
        alarms.endSecond(t, now, suspectStuck, false, events);
        alarms.suppress(t, events);
        t++;
    }

    private List<AlarmName> raised() {
        return Cooks.raised(events);
    }

    private String text(AlarmName name) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.change() == AlarmChange.RAISED
                        && changed.alarm().name() == name)
                .map(event -> ((CookEvent.AlarmChanged) event).alarm().text())
                .findFirst()
                .orElseThrow();
    }

    private void say(TestWord word) {
        OptionalDouble unknown = OptionalDouble.empty();
        tests.say(t, Math.round(t * 1000), word, new SetTests.Pan(unknown, unknown, unknown));
    }

    @Test
    void theWindowTheGelPointAndBeyond_areEachCalledOnce() {
        stand(30, 102);
        assertThat(raised()).isEmpty();
        stand(4, 103);
        assertThat(raised()).containsExactly(AlarmName.START_SET_TESTS);
        stand(4, 104);
        assertThat(raised()).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
        assertThat(text(AlarmName.GEL_POINT)).startsWith("It has reached the setting point, {temp:104.0}.");
        stand(40, 105.2);
        assertThat(raised()).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
        assertThat(text(AlarmName.PAST_GEL_POINT)).startsWith("It is more than {diff:1.2} past the setting point.");
        assertThat(board.present(AlarmName.GEL_POINT)).isFalse();
    }

    @Test
    void whoComesBackToTheGelPoint_isToldWhenItIsNoLongerPast() {
        stand(10, 104);
        stand(40, 105);
        stand(26, 104);
        assertThat(stages.stage()).isEqualTo(Stage.AT_GEL_POINT);
        stand(19, 104);
        assertThat(board.present(AlarmName.PAST_GEL_POINT)).isTrue();
        assertThat(board.present(AlarmName.GEL_POINT)).isFalse();
        stand(2, 104);
        assertThat(board.present(AlarmName.PAST_GEL_POINT)).isFalse();
        assertThat(board.present(AlarmName.GEL_POINT)).isTrue();
    }

    @Test
    void theCallToTheTests_isOverWhenTheGelPointWasCalled_thoughItIsBackInTheWindow() {
        stand(10, 103);
        stand(10, 104);
        stand(310, 103.2);
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
        assertThat(board.present(AlarmName.START_SET_TESTS)).isFalse();
    }

    @Test
    void whatIsSilencedAlready_isNotToldInItsFirstSecond() {
        stand(30, 102);
        stand(3, 103);
        board.update(t, AlarmName.PROBE_SILENT, Condition.PRESENT, () -> AlarmText.NONE, new ArrayList<>());
        stand(1, 103);
        assertThat(board.present(AlarmName.START_SET_TESTS)).isTrue();
        assertThat(raised()).isEmpty();
    }

    @Test
    void anotherGelPoint_settlesWhatWasCalled_andIsCalledAnew() {
        stand(10, 103);
        stand(10, 104);
        events.clear();
        CookSettings later = new CookSettings(SETTINGS.waterBoil(), 6, 1);
        stages.aim(later);
        alarms.aim(t, later, events);
        assertThat(board.present(AlarmName.GEL_POINT)).isFalse();
        assertThat(board.present(AlarmName.START_SET_TESTS)).isFalse();
        stand(30, 104);
        assertThat(raised()).isEmpty();
        stand(10, 105);
        assertThat(raised()).containsExactly(AlarmName.START_SET_TESTS);
        // well below the window that is aimed at now, though in that of before
        stand(330, 103);
        assertThat(board.present(AlarmName.START_SET_TESTS)).isFalse();
        stand(10, 106);
        assertThat(raised()).endsWith(AlarmName.GEL_POINT);
    }

    @Test
    void whatIsPastAnotherGelPoint_isMeasuredFromThatOne() {
        CookSettings later = new CookSettings(SETTINGS.waterBoil(), 5, 1);
        stages.aim(later);
        alarms.aim(t, later, events);
        stand(10, 106.5);
        assertThat(text(AlarmName.PAST_GEL_POINT)).startsWith("It is more than {diff:1.5} past");
    }

    @Test
    void aPanThatStandsStill_isStalledUnlessTheProbeIsSuspected_andSaysSinceWhen() {
        know(standsStill());
        for (int i = 0; i < 600; i++) {
            // it climbed for five minutes, and has stood for five
            Signals now = MadeSignals.at(t, 101 + 0.2 * Math.min(t, 300) / 60);
            stages.follow(now);
            second(now, true);
        }
        assertThat(raised()).isEmpty();
        second(MadeSignals.at(t, 102), false);
        assertThat(raised()).containsExactly(AlarmName.STALLED);
        // it was 0.15 °C lower 45 s before it stood still, at 300 s
        assertThat(text(AlarmName.STALLED)).startsWith("No water has left since {clock:255}.");
    }

    @Test
    void sinceWhenItStands_countsFromWhereTheReadingsBeganAnew() {
        know(standsStill());
        for (int i = 0; i < 600; i++) {
            Signals now = MadeSignals.at(t, 101 + 0.2 * Math.min(t, 300) / 60);
            stages.follow(now);
            second(now, true);
        }
        alarms.restart();
        second(MadeSignals.at(t, 102), false);
        assertThat(text(AlarmName.STALLED)).startsWith("No water has left since {clock:510}.");
    }

    /** It stopped just short of the gel point, which was called all the same. */
    @Test
    void aPanThatStandsShortOfTheGelPointThatWasCalled_isStalled_andSaysByHowMuch() {
        know(standsStill());
        stand(10, 104);
        assertThat(raised()).containsExactly(AlarmName.GEL_POINT);
        stand(30, 103.8);
        assertThat(stages.stage()).isEqualTo(Stage.AT_GEL_POINT);
        assertThat(raised()).containsExactly(AlarmName.GEL_POINT, AlarmName.STALLED);
        assertThat(text(AlarmName.STALLED))
                .matches(
                        "No water has left since \\{clock:-?[0-9]+}, and it is \\{diff:0\\.2} short of the setting point\\."
                                + " If it has not set: is a lid on, or the heat too low\\?");
        // it comes off the heat
        watch(30, at -> MadeSignals.falling(at, 102.5, 103.8, -1.2));
        assertThat(board.present(AlarmName.STALLED)).isFalse();
    }

    @Test
    void aPanThatIsKeptAtTheGelPoint_isSaidToBeShortOfItOnce() {
        know(standsStill());
        stand(10, 104);
        for (int i = 0; i < 5; i++) {
            stand(60, 103.8);
            stand(60, 104.1);
        }
        assertThat(raised()).containsExactly(AlarmName.GEL_POINT, AlarmName.STALLED);
        assertThat(board.present(AlarmName.STALLED)).isFalse();
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {103.95, 104, 104.3})
    void aPanThatStandsAtTheGelPoint_isNotStalled(double atC) {
        know(standsStill());
        stand(10, 104);
        stand(300, atC);
        assertThat(raised()).containsExactly(AlarmName.GEL_POINT);
    }

    @Test
    void aPanOffTheHeat_isSaidToCool() {
        stand(100, 102);
        stages.end();
        for (int i = 0; i < 90; i++) {
            second(MadeSignals.falling(t, 102 - 0.02 * i, 102, -1.2), false);
        }
        // it was last within 0.15 °C of its height at 105 s
        assertThat(text(AlarmName.STALLED))
                .isEqualTo("It is cooling from {temp:102.0}, since {clock:105}. Is the heat on?");
    }

    @Test
    void aPanThatWarmsAgain_isStalledNoLonger_andIsNotCalledSo() {
        know(standsStill());
        stand(30, 102);
        assertThat(board.present(AlarmName.STALLED)).isTrue();
        for (int i = 0; i < 11; i++) { // ten seconds, until it is taken back
            alarms.endSecond(t, MadeSignals.at(t, 102), false, true, events);
            t++;
        }
        assertThat(board.present(AlarmName.STALLED)).isFalse();
        stand(30, 102);
        assertThat(board.present(AlarmName.STALLED)).isTrue();
    }

    @Test
    void aPanThatReachedTheWindow_isAskedWhetherItIsSet() {
        stand(100, 103);
        stages.end();
        for (int i = 0; i < 140; i++) {
            second(MadeSignals.falling(t, 103 - 0.02 * i, 103, -1.2), false);
        }
        assertThat(text(AlarmName.STALLED)).endsWith("Is it set, or should it be back on the heat?");
    }

    @Test
    void aPanKnownToCool_isSaidToCool_thoughItIsCalledBoiling() {
        know(MadePan.climbing(0.5, 900, -0.6).watch(1100).forecaster());
        assertThat(forecaster.cools()).isTrue();
        stand(30, 102);
        assertThat(text(AlarmName.STALLED)).startsWith("It is cooling");
    }

    private static Signals coolsSlowly(double t, double fromT) {
        double fallenC = Math.max(0, t - fromT) * 0.6 / 60;
        return MadeSignals.falling(t, 102.4 - fallenC, 102.4, t > fromT ? -0.6 : 0);
    }

    /** When a stall was raised of a pan that cools slowly from {@code fromT} on, though it is called boiling. */
    private OptionalDouble stalledT(double fromT) {
        stand(30, 102.4);
        while (t < fromT + 400) {
            second(coolsSlowly(t, fromT), false);
        }
        return Cooks.raisedT(events, AlarmName.STALLED);
    }

    @Test
    void aPanWhoseReadingsFallSlowly_isSaidToCool() {
        assertThat(stalledT(100).orElseThrow()).isBetween(220.0, 240.0);
        assertThat(text(AlarmName.STALLED)).startsWith("It is cooling");
    }

    @Test
    void threeMinutesAfterTheBaseWasHot_aFallIsAFallAgain() {
        stand(30, 102.4);
        for (int i = 0; i < 2; i++) {
            board.update(t, AlarmName.SCORCH_RISK, Condition.PRESENT, () -> AlarmText.NONE, events);
            t += 30;
        }
        stand(2, 102.4);
        double hotT = t - 1;
        board.over(t, AlarmName.SCORCH_RISK, events);
        double stalledT = stalledT(200).orElseThrow();
        assertThat(stalledT).isEqualTo(stalledFromT(hotT + 179));
    }

    /** When a stall is raised if the readings begin anew at {@code fromT}. */
    private static double stalledFromT(double fromT) {
        PanAlarmsTest other = new PanAlarmsTest();
        other.stand(30, 102.4);
        while (other.t < 600) {
            if (other.t == fromT) {
                other.alarms.restart();
            }
            other.second(coolsSlowly(other.t, 200), false);
        }
        return Cooks.raisedT(other.events, AlarmName.STALLED).orElseThrow();
    }

    @Test
    void readingsKnownToBeHotterThanThePan_doNotFall() {
        know(MadePan.climbing(0.5, 900, 3).watch(1000).forecaster());
        assertThat(forecaster.misledUpwards()).isTrue();
        assertThat(stalledT(100)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whoTakesItOffNearTheGelPoint_isAskedOnlyIfItWasTestedAndIsNotSet(boolean notYet) {
        stand(30, 103.8);
        stages.end();
        if (notYet) {
            say(TestWord.seen("one", TestAnswer.NOT_YET));
        }
        for (int i = 0; i < 140; i++) {
            second(MadeSignals.falling(t, 103 - i / 50.0, 103.8, -1.2), false);
        }
        assertThat(board.present(AlarmName.STALLED)).isEqualTo(notYet);
    }

    @Test
    void afterTheGelPointWasCalled_nothingStalls() {
        stand(30, 104);
        stages.end();
        for (int i = 0; i < 200; i++) {
            second(MadeSignals.falling(t, 102, 102.5, -1.2), false);
        }
        assertThat(board.present(AlarmName.STALLED)).isFalse();
    }

    /** A pan whose reading climbs by so much a minute from 900 s on, watched for so long after that. */
    private MadePan hot(double perMinC, Pace pace, double forS) {
        MadePan pan = MadePan.climbing(1.5, 900, perMinC);
        alarms = new PanAlarms(SETTINGS, board, pan.stages(), pan.forecaster(), tests, pace, unseen(pace), noSugar());
        pan.watch(900 + forS, now -> alarms.endSecond(now.t(), now, false, false, events));
        return pan;
    }

    @Test
    void theBaseCatches_isRaisedWithinAMinute_andOnlyWhereReadingsComeOften() {
        hot(3, Pace.BY_ITSELF, 60);
        assertThat(raised()).contains(AlarmName.SCORCH_RISK);
        PanAlarmsTest byHand = new PanAlarmsTest();
        byHand.hot(3, Pace.BY_HAND, 60);
        assertThat(byHand.raised()).doesNotContain(AlarmName.SCORCH_RISK);
    }

    @Test
    void whenTheBaseCatches_theLastMinuteIsDoubted_thoughTheReadingsAreHardlyTooHigh() {
        MadePan pan = hot(0.7, Pace.BY_ITSELF, 51);
        assertThat(raised()).contains(AlarmName.SCORCH_RISK);
        assertThat(pan.forecaster().misledUpwards()).isTrue();
        Forecaster nobodyAsked = MadePan.climbing(1.5, 900, 0.7).watch(pan.t()).forecaster();
        assertThat(nobodyAsked.misledUpwards()).isFalse();
    }
}
