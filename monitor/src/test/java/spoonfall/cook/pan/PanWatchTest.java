package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.MadeCook;
import spoonfall.cook.MadePan;
import spoonfall.cook.ReminderName;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.WentIn;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.settest.TestAnswer;

/** How a pan is said to be whose readings are drawn by hand, and what is made of readings that are not the pan's. */
final class PanWatchTest {
    private static final Offset<Double> NEAR_C = Offset.offset(0.1);

    private static Optional<Forecast> forecast(MadeCook cook) {
        return cook.status().forecast();
    }

    private static List<AlarmName> cleared(MadeCook cook) {
        return cook.events().stream()
                .filter(event ->
                        event instanceof CookEvent.AlarmChanged changed && changed.change() == AlarmChange.CLEARED)
                .map(event -> ((CookEvent.AlarmChanged) event).alarm().name())
                .toList();
    }

    private static List<CookEvent.Reminded> reminded(MadeCook cook) {
        return cook.events().stream()
                .filter(CookEvent.Reminded.class::isInstance)
                .map(CookEvent.Reminded.class::cast)
                .toList();
    }

    @Test
    void beforeTheFirstReading_nothingIsKnown() {
        CookStatus status = MadeCook.begun().silent(60).status();
        assertThat(status)
                .isEqualTo(new CookStatus(
                        60,
                        OptionalDouble.empty(),
                        Quality.SILENT,
                        Optional.empty(),
                        Stage.WAITING,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        WentIn.NOTHING,
                        false));
    }

    /** What a thermometer shows whose steps are a tenth of a degree, in a pan whose bubbles fall still at times. */
    private static double showsC(double t) {
        double bubblesC = t % 300 < 250 ? 0.06 : 0;
        double readC = 101.5 + MadePan.CLIMBS_PER_MIN_C * t / 60 + bubblesC * Math.sin(1.7 * t) * Math.sin(0.23 * t);
        return Math.rint(10 * readC) / 10;
    }

    @Test
    void aThermometerThatSpeaksOnlyWhenItsReadingMoves_watchesAsOneThatSaysEverything() {
        MadeCook everything = MadeCook.begun().watch(590, PanWatchTest::showsC);
        MadeCook changes = MadeCook.begun().watch(1, PanWatchTest::showsC);
        for (int t = 1; t < 590; t++) {
            if (showsC(t) == showsC(t - 1)) {
                changes.silent(1);
            } else {
                changes.watch(1, PanWatchTest::showsC);
            }
        }
        assertThat(changes.raisedSince(250)).isEmpty();
        assertThat(changes.status().seen().orElseThrow().t())
                .as("it spoke last")
                .isLessThan(575);
        assertThat(changes.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(changes.status().temperatureC().orElseThrow())
                .isCloseTo(everything.status().temperatureC().orElseThrow(), NEAR_C);
        double etaS = forecast(everything).orElseThrow().etaS();
        assertThat(forecast(changes).orElseThrow().etaS()).isCloseTo(etaS, Offset.offset(0.1 * etaS));
    }

    @Test
    void aBoilingPan_isSaidWithItsClimbItsSolidsAndItsForecast() {
        MadeCook cook = MadeCook.boiling(600);
        CookStatus status = cook.status();
        assertThat(status.temperatureC().orElseThrow()).isCloseTo(102.5, NEAR_C);
        assertThat(status.quality()).isEqualTo(Quality.GOOD);
        assertThat(status.seen()).contains(new CookStatus.Seen(599, MadeCook.boilsC(599)));
        assertThat(status.stage()).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(status.ratePerMinC().orElseThrow()).isCloseTo(0.1, Offset.offset(0.02));
        assertThat(status.solids().orElseThrow()).isBetween(0.45, 0.6);
        assertThat(status.forecast().orElseThrow().etaS()).isBetween(450.0, 900.0);
        assertThat(status.wentIn()).isEqualTo(WentIn.NOTHING);
    }

    @Test
    void aPanThatOnlyWarms_hasARate_butNoSolidsAndNoForecast() {
        CookStatus status = MadeCook.begun().watch(300, t -> 50 + 0.05 * t).status();
        assertThat(status.stage()).isEqualTo(Stage.WARMING);
        assertThat(status.ratePerMinC().orElseThrow()).isCloseTo(3, Offset.offset(0.1));
        assertThat(status.solids()).isEmpty();
        assertThat(status.forecast()).isEmpty();
    }

    @ParameterizedTest(name = "{0} s of silence")
    @ValueSource(ints = {8, 10})
    void whatIsNotFresh_isNotSaid(int silentS) {
        CookStatus status = MadeCook.boiling(600).silent(silentS - 1).status();
        boolean fresh = silentS == 8;
        assertThat(status.temperatureC().isPresent()).isEqualTo(fresh);
        assertThat(status.ratePerMinC().isPresent()).isEqualTo(fresh);
        assertThat(status.solids().isPresent()).isEqualTo(fresh);
        assertThat(status.forecast().isPresent()).isEqualTo(fresh);
        assertThat(status.quality()).isEqualTo(fresh ? Quality.GOOD : Quality.SILENT);
        assertThat(status.seen()).isPresent();
        assertThat(status.stage()).isEqualTo(Stage.ROLLING_BOIL);
    }

    @Test
    void aBadReading_isAQuality_andOneWildValueIsNoTemperature() {
        MadeCook cook = MadeCook.boiling(600);
        cook.monitor().accept(Reading.bad("pan", cook.nanos(), "ERR", Quality.NOT_FINITE));
        assertThat(cook.status().quality()).isEqualTo(Quality.NOT_FINITE);
        assertThat(cook.status().temperatureC()).isPresent();
        cook.watch(1, t -> 120);
        assertThat(cook.status().quality()).isEqualTo(Quality.SPIKE);
        assertThat(cook.status().seen().orElseThrow().t()).isEqualTo(599);
        cook.watch(1, MadeCook::boilsC);
        assertThat(cook.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(cook.status().temperatureC().orElseThrow()).isCloseTo(102.5, NEAR_C);
    }

    @Test
    void whatAPlanSaysOfThePan_countsAtFirst() {
        MadeCook told = MadeCook.begun();
        told.monitor().expect(new PanPrior(2, 1, 0.12, 0.2));
        double with = forecast(told.watch(120, MadeCook::boilsC)).orElseThrow().etaS();
        double without = forecast(MadeCook.boiling(120)).orElseThrow().etaS();
        assertThat(Math.abs(with - without)).isGreaterThan(60);
    }

    @Test
    void ofAProbeInSteam_itIsSaidWhereItFellFrom_thoughThatIsAWhileAgo() {
        MadeCook cook = MadeCook.boiling(600).watch(80, t -> 102.5 + 7 * Math.expm1((600 - t) / 3));
        assertThat(cook.alarm(AlarmName.PROBE_OUT_OF_PAN).title())
                .isEqualTo("The reading fell from {temp:102.5} faster than a pan can cool.");
    }

    @Test
    void aProbeOutOfThePan_isNotBelieved_andThePanIsWhereItWasWhenItIsBack() {
        MadeCook cook = MadeCook.boiling(600).watch(60, t -> 40);
        assertThat(cook.raisedSince(600)).containsExactly(AlarmName.PROBE_OUT_OF_PAN);
        assertThat(cook.status().quality()).isEqualTo(Quality.OUT_OF_PAN);
        double onS = forecast(MadeCook.boiling(660)).orElseThrow().etaS();
        assertThat(forecast(cook).orElseThrow().etaS())
                .as("the pan goes on meanwhile")
                .isCloseTo(onS, Offset.offset(60.0));
        assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
        cook.watch(100, MadeCook::boilsC);
        assertThat(cleared(cook)).containsExactly(AlarmName.PROBE_OUT_OF_PAN);
        assertThat(cook.raisedSince(661)).isEmpty();
        assertThat(cook.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(cook.status().ratePerMinC().orElseThrow())
                .as("no line goes through what was read in the air")
                .isCloseTo(0.1, NEAR_C);
        double undisturbedS = forecast(MadeCook.boiling(760)).orElseThrow().etaS();
        assertThat(forecast(cook).orElseThrow().etaS()).isCloseTo(undisturbedS, Offset.offset(60.0));
    }

    @Test
    void aStuckProbe_isNotBelieved_untilItMoves() {
        MadeCook cook = MadeCook.boiling(600).watch(150, t -> MadeCook.boilsC(600));
        assertThat(cook.raisedSince(600)).containsExactly(AlarmName.PROBE_STUCK);
        assertThat(cook.status().quality()).isEqualTo(Quality.STUCK);
        assertThat(forecast(cook)).isEmpty();
        cook.say(TestWord.begun("a", 90));
        assertThat(cook.monitor().tests().open().orElseThrow().temperatureC()).isEmpty();
        cook.watch(30, MadeCook::boilsC);
        assertThat(cook.status().quality()).isEqualTo(Quality.GOOD);
        assertThat(cook.status().temperatureC().orElseThrow()).isCloseTo(MadeCook.boilsC(780), NEAR_C);
    }

    @Test
    void aProbeThatLeapsToWhereThePanHasGone_saysNothingOfItsClimb() {
        // stood for less than it takes to be called stuck
        MadeCook cook = MadeCook.boiling(600).watch(60, t -> MadeCook.boilsC(600));
        cook.watch(60, MadeCook::boilsC);
        assertThat(cook.raisedSince(600)).isEmpty();
        double undisturbedS = forecast(MadeCook.boiling(720)).orElseThrow().etaS();
        assertThat(forecast(cook).orElseThrow().etaS()).isCloseTo(undisturbedS, Offset.offset(60.0));
    }

    @Test
    void aJumpThatNoPanCanMake_isNotBelieved() {
        MadeCook cook = MadeCook.boiling(600).watch(30, t -> 118);
        assertThat(cook.raisedSince(600)).containsExactly(AlarmName.PROBE_IMPLAUSIBLE);
        assertThat(cook.status().quality()).isIn(Quality.IMPLAUSIBLE, Quality.SILENT);
        assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(forecast(cook)).isEmpty();
    }

    @Test
    void whileItIsTested_noForecastIsGiven() {
        MadeCook cook = MadeCook.boiling(900).say(TestWord.begun("a", 90)).watch(20, t -> MadeCook.boilsC(900) - 2);
        assertThat(forecast(cook)).isEmpty();
        cook.say(TestWord.seen("a", TestAnswer.RUNS)).watch(40, MadeCook::boilsC);
        assertThat(forecast(cook)).isPresent();
    }

    @Test
    void whileItStandsOffTheHeatForATest_noWaterLeaves() {
        MadeCook cook = MadeCook.boiling(700).say(TestWord.begun("a", 90));
        cook.watch(180, t -> MadeCook.boilsC(700) - Math.min(5, (t - 700) * 0.05));
        cook.watch(100, t -> MadeCook.boilsC(t - 180));
        double undisturbedS = forecast(MadeCook.boiling(800)).orElseThrow().etaS();
        assertThat(forecast(cook).orElseThrow().etaS()).isCloseTo(undisturbedS, Offset.offset(40.0));
    }

    @Test
    void aPanThatStandsStill_isSaidToBeStalled_andHasNoForecast() {
        MadeCook cook = MadeCook.boiling(900).watch(600, t -> MadeCook.boilsC(900) + 0.02 * Math.sin(1.7 * t));
        assertThat(cook.raisedSince(900)).contains(AlarmName.STALLED);
        assertThat(forecast(cook)).isEmpty();
    }

    private static double coldC(double t) {
        return MadeCook.boilsC(t) - Math.max(0, 12 - Math.max(0, t - 630) * 0.05);
    }

    @Test
    void somethingColdThatWentIn_isSaid_whileItIsFresh() {
        MadeCook cook = MadeCook.boiling(600).watch(100, PanWatchTest::coldC);
        assertThat(cook.status().wentIn()).isEqualTo(WentIn.SOMETHING_COLD);
        assertThat(cook.raisedSince(600)).isEmpty();
        assertThat(cook.silent(30).status().wentIn()).isEqualTo(WentIn.NOTHING);
    }

    @Test
    void theReminders_comeAheadOfTheWindowAndOfTheSet_atTensOfSeconds() {
        MadeCook cook = MadeCook.boiling(700);
        assertThat(reminded(cook))
                .extracting(CookEvent.Reminded::reminder)
                .containsExactly(ReminderName.CHILL_PLATES, ReminderName.WARM_JARS);
        assertThat(reminded(cook)).allMatch(event -> event.t() % 10 == 0);
    }

    @Test
    void aThickPan_isToBeStirred() {
        CookSettings firm = new CookSettings(MadePan.SETTINGS.waterBoil(), 8);
        assertThat(reminded(MadeCook.begun(firm).watch(900, MadeCook::boilsC)))
                .extracting(CookEvent.Reminded::reminder)
                .doesNotContain(ReminderName.STIR);
        assertThat(reminded(MadeCook.begun(firm).watch(900, t -> MadeCook.boilsC(t) + 1.5)))
                .extracting(CookEvent.Reminded::reminder)
                .contains(ReminderName.STIR);
    }

    @Test
    void aPanThatReachesTheGelPoint_goesThroughItsStages() {
        MadeCook cook = MadeCook.boiling(1600);
        assertThat(Cooks.stages(cook.events()))
                .containsExactly(Stage.ROLLING_BOIL, Stage.TEST_WINDOW, Stage.AT_GEL_POINT);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(880.0, 905.0);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.GEL_POINT).orElseThrow())
                .isBetween(1480.0, 1505.0);
    }

    @Test
    void readingsThatClimbFasterThanWaterLeaves_areNotTheGelPoint() {
        // a degree too high within half a minute, and back
        MadeCook cook = MadeCook.boiling(900)
                .watch(60, t -> MadeCook.boilsC(t) + Math.min(1.2, (t - 900) * 0.04))
                .watch(60, MadeCook::boilsC);
        assertThat(Cooks.stages(cook.events())).doesNotContain(Stage.AT_GEL_POINT);
        assertThat(cook.raised()).doesNotContain(AlarmName.GEL_POINT);
    }

    @Test
    void overABaseThatCatches_theGelPointIsNotCalledBeforeItIsDue() {
        MadeCook cook = MadeCook.boiling(700).watch(300, t -> MadeCook.boilsC(t) + (t - 700) * 0.015);
        assertThat(cook.raisedSince(700)).contains(AlarmName.SCORCH_RISK).doesNotContain(AlarmName.GEL_POINT);
        assertThat(cook.status().stage()).isIn(Stage.ROLLING_BOIL, Stage.TEST_WINDOW);
    }

    @Test
    void aPanReadByHand_isCalledInTime_andTheGelPointIsNotPastBeforeItIsRead() {
        MadeCook cook = MadeCook.byHand().typed(60, 1800, MadeCook.coarse(MadeCook::boilsC));
        assertThat(Cooks.raisedT(cook.events(), AlarmName.GEL_POINT).orElseThrow())
                .isBetween(1380.0, 1620.0);
        cook.silent(150);
        assertThat(cook.raised()).doesNotContain(AlarmName.PAST_GEL_POINT);
    }

    @ParameterizedTest(name = "{0} °C in the air")
    @CsvSource({"20", "60"})
    void readByHand_whatFalls_isNoProbeOutOfThePan(double airC) {
        MadeCook cook = MadeCook.byHand().typed(60, 900, MadeCook.coarse(t -> t < 600 ? MadeCook.boilsC(t) : airC));
        assertThat(cook.raised()).doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
    }
}
