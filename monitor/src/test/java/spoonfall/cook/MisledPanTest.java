package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.probe.Quality;

/**
 * A pan whose readings are not its own for a while, drawn by hand: a probe in the air, one that is stuck, a base that catches, and
 * one that is read by hand. What was made of it before must not tell afterwards.
 */
final class MisledPanTest {
    private static final CookSettings FIRM = new CookSettings(MadePan.SETTINGS.waterBoil(), 8);

    private static OptionalDouble stirredT(MadeCook cook) {
        return cook.events().stream()
                .filter(event ->
                        event instanceof CookEvent.Reminded reminded && reminded.reminder() == ReminderName.STIR)
                .mapToDouble(CookEvent::t)
                .findFirst();
    }

    @Test
    void aCoarseReading_isStuck_onceItShouldHaveTakenTwoSteps() {
        MadeCook cook = MadeCook.begun(FIRM).watch(900, MadeCook.coarse(MadeCook::boilsC));
        assertThat(cook.raised()).isEmpty();
        cook.watch(720, t -> 103);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.PROBE_STUCK).orElseThrow())
                .isBetween(1200.0, 1620.0);
        assertThat(cook.monitor().alarms())
                .filteredOn(alarm -> alarm.name() == AlarmName.PROBE_STUCK)
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.title()).endsWith("though the pan boils."));
    }

    @Test
    void aReadingThatStandsWhileThePanWarms_isStuck() {
        MadeCook cook = MadeCook.begun().watch(400, t -> 30 + 0.05 * t).watch(120, t -> 50);
        assertThat(cook.raised()).containsExactly(AlarmName.PROBE_STUCK);
        assertThat(cook.monitor().alarms())
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.title()).endsWith("though the pan is on its way."));
    }

    @Test
    void aCoarseReadingOfAThinPan_mayStayTheSame() {
        MadeCook cook = MadeCook.begun(FIRM).watch(500, MadeCook.coarse(t -> MadeCook.boilsC(t) - 1.3));
        cook.watch(1200, t -> 100.5);
        assertThat(cook.raised()).doesNotContain(AlarmName.PROBE_STUCK);
    }

    /** Fruit that simmers before its sugar goes in hardly climbs and hardly bubbles: a fine reading may lie still. */
    @ParameterizedTest(name = "{0} °C above water: {1}")
    @CsvSource({"0.6, false", "0.8, true"})
    void aFineReadingThatStands_isStuckOnlyIfThereIsSugarInThePan(double riseC, boolean stuck) {
        MadeCook cook = MadeCook.begun().watch(300, t -> 70 + 0.1 * t);
        cook.watch(30, t -> 100 + riseC + 0.02 * Math.sin(1.7 * t)).watch(240, t -> 100 + riseC);
        assertThat(cook.raised().contains(AlarmName.PROBE_STUCK)).isEqualTo(stuck);
    }

    @Test
    void aCoarseReadingThatFellAndStays_isNotStuck() {
        MadeCook cook = MadeCook.begun(FIRM).watch(900, MadeCook.coarse(MadeCook::boilsC));
        cook.watch(900, t -> 101);
        assertThat(cook.raised()).doesNotContain(AlarmName.PROBE_STUCK);
    }

    /** The window truly opens at 900 s. Before, the call waited until two minutes before the gel point was due. */
    @Test
    void overABaseThatCatches_theSetTestsAreCalledWhenTheyWereDueBefore() {
        MadeCook cook = MadeCook.boiling(800).watch(300, t -> MadeCook.boilsC(t) + 1.5 * (t - 800) / 60);
        assertThat(cook.raised()).startsWith(AlarmName.SCORCH_RISK, AlarmName.START_SET_TESTS);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(840.0, 940.0);
    }

    /** Sugar that goes in slowly lets the fruit boil on, and hotter from second to second. Before, that was a base that catches. */
    @Test
    void fruitIntoWhichTheSugarGoes_doesNotCatch() {
        MadeCook cook = MadeCook.begun(FIRM)
                .watch(1000, t -> MadeCook.boilsC(0.2 * t) - 1 + Math.min(1.6, Math.max(0, t - 700) * 2 / 60));
        assertThat(cook.raised()).isEmpty();
    }

    private static double bubblesC(double t) {
        return 0.06 * Math.sin(1.7 * t) + 0.05 * Math.sin(0.37 * t);
    }

    /** An hour of peel, by the weather and by a thermometer that is off read as high as a thin syrup. Before, no water was said to leave it. */
    @ParameterizedTest(name = "{0} °C above water")
    @ValueSource(doubles = {0.9, 1.2, 1.5})
    void fruitThatSimmersForAnHour_isNotStalled(double riseC) {
        MadeCook cook = MadeCook.begun().watch(300, t -> 70 + 0.1 * t);
        assertThat(cook.watch(3600, t -> 100 + riseC + bubblesC(t)).raised()).isEmpty();
    }

    @Test
    void whatClimbedByAQuarterOfADegree_andStandsThere_isStalled() {
        MadeCook cook = MadeCook.begun().watch(300, t -> 70 + 0.1 * t);
        cook.watch(1500, t -> 101 + 0.25 * Math.min(1, (t - 300) / 400.0) + bubblesC(t));
        assertThat(cook.raised()).containsExactly(AlarmName.STALLED);
    }

    /** Much cold sugar takes simmering fruit down by nearly 30 °C, where it stays while that dissolves; a probe in the air falls further. */
    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"17, false", "28, false", "32, true"})
    void fruitThatSimmered_fallsFarWhenItsSugarGoesIn(double byC, boolean out) {
        MadeCook cook = MadeCook.begun().watch(300, t -> 70 + 0.1 * t);
        cook.watch(300, t -> 100.7 + 0.02 * Math.sin(1.7 * t))
                .watch(110, t -> 100.7 - byC * Math.min(1, (t - 600) / 20));
        assertThat(cook.raised().contains(AlarmName.PROBE_OUT_OF_PAN)).isEqualTo(out);
    }

    @Test
    void whatIsReadInTheAir_isNoWayToWhereThePanIs() {
        MadeCook cook = MadeCook.boiling(600).watch(60, t -> 40).watch(30, MadeCook::boilsC);
        assertThat(cook.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(cook.status().ratePerMinC()).isEmpty();
        double undisturbedS =
                MadeCook.boiling(690).status().forecast().orElseThrow().etaS();
        assertThat(cook.status().forecast().orElseThrow().etaS()).isCloseTo(undisturbedS, Offset.offset(20.0));
    }

    @Test
    void aProbeThatWasInSteam_isNoPanIntoWhichSomethingColdWent() {
        MadeCook cook = MadeCook.boiling(600).watch(90, t -> MadeCook.boilsC(600) - 8);
        assertThat(cook.raisedSince(600)).contains(AlarmName.PROBE_OUT_OF_PAN);
        cook.watch(60, t -> MadeCook.boilsC(600) - 1);
        assertThat(cook.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(cook.status().wentIn()).isEqualTo(WentIn.NOTHING);
    }

    @Test
    void whoCannotBeSeenToStir_isNotRemindedSoonAfterwards() {
        DoubleUnaryOperator thick = t -> MadeCook.boilsC(t) + 1.5;
        double saidT = stirredT(MadeCook.begun(FIRM).watch(700, thick)).orElseThrow();
        MadeCook cook = MadeCook.begun(FIRM).watch((int) saidT - 60, thick).watch(30, t -> 40);
        cook.watch(600, thick);
        assertThat(stirredT(cook).orElseThrow()).isBetween(saidT + 180, saidT + 300);
    }

    @Test
    void whatClimbsTooFast_isHeldBelowTheWindow() {
        DoubleUnaryOperator leaps = t -> MadeCook.boilsC(t) + Math.min(1, Math.max(0, t - 700) * 0.02);
        assertThat(Cooks.stages(MadeCook.boiling(640).watch(140, leaps).events()))
                .doesNotContain(Stage.TEST_WINDOW);
    }

    @Test
    void overABaseThatCatches_thePanIsNotInItsWindow() {
        MadeCook cook = MadeCook.boiling(400).watch(240, t -> MadeCook.boilsC(t) + (t - 400) * 0.015);
        assertThat(cook.raisedSince(400)).containsExactly(AlarmName.SCORCH_RISK);
        assertThat(Cooks.stages(cook.events())).containsExactly(Stage.ROLLING_BOIL);
    }

    @Test
    void afterABaseThatCaught_theReadingComesDown_andThePanIsNotOffTheHeat() {
        MadeCook cook = MadeCook.boiling(400)
                .watch(200, t -> MadeCook.boilsC(t) + (t - 400) * 0.016)
                .watch(80, t -> MadeCook.boilsC(t) + (680 - t) * 0.04)
                .watch(150, MadeCook::boilsC);
        assertThat(cook.raisedSince(400)).containsExactly(AlarmName.SCORCH_RISK);
        assertThat(Cooks.stages(cook.events())).containsExactly(Stage.ROLLING_BOIL);
    }

    @Test
    void whileTheProbeIsSilent_theCallToTestMeansNothing() {
        MadeCook cook = MadeCook.boiling(950);
        assertThat(cook.monitor().alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.START_SET_TESTS);
        cook.silent(10);
        assertThat(cook.monitor().alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PROBE_SILENT);
        assertThat(cook.events())
                .anyMatch(event ->
                        event instanceof CookEvent.AlarmChanged changed && changed.change() == AlarmChange.SUPPRESSED);
    }

    private static double warmsUpC(double t) {
        return t < 600 ? 101.5 - (600 - t) * 0.04 : MadeCook.boilsC(t - 600);
    }

    @Test
    void readByHand_theWayUpToTheBoil_isNoClimbOfThePan() {
        MadeCook cook = MadeCook.byHand();
        for (int untilS = 750; untilS <= 1110; untilS += 60) {
            cook.typed(30, untilS, MadeCook.coarse(MisledPanTest::warmsUpC));
            assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
            assertThat(cook.status().ratePerMinC().orElse(0))
                    .as("at %d s", untilS)
                    .isLessThan(0.5);
        }
        assertThat(cook.status().ratePerMinC()).isPresent();
    }

    @Test
    void readByItself_theClimbGoesOnWithTheBoil() {
        MadeCook cook = MadeCook.begun().watch(640, MisledPanTest::warmsUpC);
        assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(cook.status().ratePerMinC()).isPresent();
    }

    @Test
    void readByHand_thePanIsTakenToGoOn_forTwoAndAHalfMinutes() {
        DoubleUnaryOperator climbs = t -> MadeCook.boilsC(t) - 0.65;
        MadeCook cook = MadeCook.byHand()
                .typed(200, 1000, MadeCook.coarse(climbs))
                .watch(1, climbs)
                .silent(350);
        assertThat(cook.status().fresh()).isTrue();
        assertThat(cook.status().forecast().orElseThrow().windowS()).isZero();
        assertThat(cook.status().stage()).as("it was not read there").isEqualTo(Stage.ROLLING_BOIL);
        assertThat(cook.raised()).isEmpty();
    }

    @Test
    void readByHand_theGelPointIsCalledBeforeItIsRead() {
        MadeCook cook = MadeCook.byHand().typed(60, 1380, MadeCook::boilsC);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS);
        cook.watch(1, MadeCook::boilsC).silent(150);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
    }

    @Test
    void readByHand_itIsNotPast_beforeThatIsRead() {
        MadeCook cook = MadeCook.byHand().typed(60, 1980, MadeCook::boilsC);
        cook.watch(1, t -> 104.9).silent(150);
        assertThat(cook.raised()).contains(AlarmName.GEL_POINT).doesNotContain(AlarmName.PAST_GEL_POINT);
        cook.watch(1, t -> 105.1).silent(5);
        assertThat(cook.raised()).contains(AlarmName.PAST_GEL_POINT);
    }
}
