package spoonfall.cook.monitor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.MadeCook;
import spoonfall.cook.SetTest;
import spoonfall.cook.Stage;
import spoonfall.cook.TestChange;
import spoonfall.cook.TestWord;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.settest.TestAnswer;

/** What is said of set tests in a pan that climbs to its gel point, and what the watch of the pan makes of it. */
final class PanTalkTest {
    private static final Offset<Double> NEAR_C = Offset.offset(0.1);

    private static SetTest begin(MadeCook cook) {
        cook.say(TestWord.begun("a", 90));
        return cook.monitor().tests().open().orElseThrow();
    }

    private static List<Stage> stagesSince(MadeCook cook, double sinceT) {
        return Cooks.stages(cook.eventsSince(sinceT));
    }

    @Test
    void aTest_takesThePanAsItStands() {
        MadeCook cook = MadeCook.boiling(900);
        SetTest test = begin(cook);
        assertThat(cook.events()).contains(new CookEvent.TestChanged(900, TestChange.BEGUN, test));
        assertThat(test.beganT()).isEqualTo(900);
        assertThat(test.temperatureC().orElseThrow()).isCloseTo(103, NEAR_C);
        assertThat(test.riseC().orElseThrow()).isCloseTo(3, NEAR_C);
        assertThat(test.solids().orElseThrow()).isBetween(0.5, 0.65);
    }

    @ParameterizedTest(name = "{0} °C down: {1} °C")
    @CsvSource({"0.3, 103", "3, 103"})
    void whoSaysSoALittleLate_meansThePanBeforeItFell(double byC, double expectedC) {
        MadeCook late = MadeCook.boiling(900).watch(10, t -> MadeCook.boilsC(t) - byC);
        assertThat(begin(late).temperatureC().orElseThrow()).isCloseTo(expectedC, NEAR_C);
    }

    @Test
    void inAPanThatCoolsForLong_theTestIsOfItsHeight() {
        MadeCook cools = MadeCook.boiling(900).watch(100, t -> MadeCook.boilsC(900) - (t - 900) * 0.03);
        assertThat(cools.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        assertThat(begin(cools).temperatureC().orElseThrow()).isCloseTo(103, NEAR_C);
    }

    @Test
    void whereTheProbeIsSilentOrOutOfThePan_nothingIsKnownOfThePanThatIsTested() {
        SetTest silent = begin(MadeCook.boiling(900).silent(30));
        assertThat(silent.temperatureC()).isEmpty();
        assertThat(silent.solids()).isEmpty();
        SetTest out = begin(MadeCook.boiling(900).watch(30, t -> 45));
        assertThat(out.riseC()).isEmpty();
    }

    /** The answer moves the gel point on: the pan that stands off the heat is still one that is close to setting. */
    @Test
    void aPanThatWasTestedInItsWindow_wasClose_alsoAfterTheAnswer() {
        MadeCook cook = MadeCook.boiling(900).watch(300, MadeCook::boilsC);
        assertThat(cook.status().wasClose()).isTrue();
        begin(cook);
        cook.watch(100, t -> 103.5 - 0.05 * (t - 1200));
        assertThat(cook.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        cook.say(TestWord.seen("a", TestAnswer.THICKENS)).watch(5, t -> 98.5);
        assertThat(cook.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        assertThat(cook.status().wasClose()).isTrue();
        assertThat(MadeCook.boiling(600).status().wasClose()).isFalse();
    }

    @ParameterizedTest(name = "by {0} °C: {1} °C")
    @CsvSource({"0.5, 94.5", "0.6, 95"})
    void ofAPanOfWhichNothingIsKnown_aFallOfMoreThanHalfADegreeIsSeen(double byC, double expectedC) {
        MadeCook cook = MadeCook.begun().watch(120, t -> 95).watch(150, t -> 95 - byC);
        assertThat(begin(cook).temperatureC().orElseThrow()).isCloseTo(expectedC, Offset.offset(1e-6));
    }

    @Test
    void aTestOfAPanBelowTheBoil_findsNoSolids() {
        MadeCook warm = MadeCook.begun().watch(120, t -> 80);
        assertThat(begin(warm).solids().orElseThrow()).isCloseTo(0, Offset.offset(0.01));
    }

    @Test
    void set_endsTheBoil_andWhoTakesThatBackGoesOn() {
        MadeCook cook = MadeCook.boiling(900);
        begin(cook);
        cook.say(TestWord.seen("a", TestAnswer.WRINKLES));
        assertThat(cook.monitor().tests().set()).isTrue();
        assertThat(cook.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        assertThat(stagesSince(cook, 900)).containsExactly(Stage.OFF_THE_HEAT);
        cook.say(TestWord.unseen("a"));
        assertThat(stagesSince(cook, 900)).containsExactly(Stage.OFF_THE_HEAT, Stage.TEST_WINDOW);
        assertThat(cook.status().stage()).isEqualTo(Stage.TEST_WINDOW);
    }

    @Test
    void afterSet_nothingIsMadeOfTheReadings() {
        MadeCook cook = MadeCook.boiling(900);
        begin(cook);
        cook.say(TestWord.seen("a", TestAnswer.WRINKLES));
        cook.watch(400, t -> 106);
        assertThat(stagesSince(cook, 901)).isEmpty();
        assertThat(Cooks.raised(cook.eventsSince(901))).isEmpty();
    }

    @Test
    void whatIsTakenBack_doesNotGoOnFromTheReadingsBefore() {
        MadeCook cook = MadeCook.boiling(900);
        begin(cook);
        cook.say(TestWord.seen("a", TestAnswer.WRINKLES)).watch(300, t -> MadeCook.boilsC(t) - 2.5);
        cook.say(TestWord.unseen("a")).watch(10, MadeCook::boilsC);
        assertThat(cook.status().ratePerMinC())
                .as("a line through both would tell nothing of the pan")
                .isEmpty();
    }

    @Test
    void notYet_aimsHigher_andTheStageIsJudgedAnew() {
        MadeCook cook = MadeCook.boiling(1200);
        assertThat(cook.raised()).contains(AlarmName.START_SET_TESTS);
        double before = cook.monitor().tests().aim().riseC();
        begin(cook);
        cook.say(TestWord.seen("a", TestAnswer.RUNS));
        CookSettings aim = cook.monitor().tests().aim();
        assertThat(aim.riseC()).isGreaterThan(before);
        assertThat(cook.monitor().tests().nextRiseC()).isEqualTo(aim.riseC());
        assertThat(stagesSince(cook, 1200)).containsExactly(Stage.ROLLING_BOIL);
        Forecast forecast = cook.watch(60, MadeCook::boilsC).status().forecast().orElseThrow();
        assertThat(cook.monitor().alarms())
                .as("what was called for the old aim is settled")
                .isEmpty();
        assertThat(forecast.etaS()).isEqualTo(cook.monitor().tests().nextInS().orElseThrow(), Offset.offset(1e-6));
    }

    @Test
    void theNextTest_isDueByTheForecast_whereThereIsOne() {
        MadeCook cook = MadeCook.boiling(600);
        SetTestsNow now = cook.monitor().tests();
        assertThat(now.nextRiseC()).isBetween(3.0, 4.0);
        assertThat(now.nextInS().orElseThrow())
                .isBetween(
                        cook.status().forecast().orElseThrow().windowS(),
                        cook.status().forecast().orElseThrow().etaS());
        assertThat(cook.silent(30).monitor().tests().nextInS()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void whileItIsTested_nobodyIsCalledToTest() {
        double calledT = Cooks.raisedT(MadeCook.boiling(1000).events(), AlarmName.START_SET_TESTS)
                .orElseThrow();
        MadeCook cook = MadeCook.boiling((int) calledT - 5);
        begin(cook);
        cook.watch(30, MadeCook::boilsC);
        assertThat(cook.raised()).isEmpty();
    }

    @Test
    void whatIsSaid_countsAtOnce() {
        MadeCook cook = MadeCook.boiling(950);
        assertThat(cook.monitor().alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.START_SET_TESTS);
        cook.say(TestWord.begun("a", 60));
        assertThat(cook.monitor().alarms()).as("nobody is to test twice").isEmpty();
        cook.watch(61, t -> MadeCook.boilsC(t) - 2);
        assertThat(cook.monitor().alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PLATE_READY);
        cook.say(TestWord.seen("a", TestAnswer.THICKENS));
        assertThat(cook.monitor().alarms())
                .as("the plate was looked at")
                .noneMatch(alarm -> alarm.state().active());
    }
}
