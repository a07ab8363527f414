package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Delays;
import spoonfall.alarm.Priority;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.cook.monitor.Retelling;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.series.Steepening;
import spoonfall.settest.TestAnswer;

/** The names and records in which a cook is told: what they are called on the wire, and what they refuse to be. */
final class CookWordsTest {
    private static final WaterBoil BOILS = WaterBoil.measured(100, 0);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    @Test
    void onTheWire_namesAreSmallLettersWithHyphens() {
        assertThat(AlarmName.START_SET_TESTS.wireName()).isEqualTo("start-set-tests");
        assertThat(Stage.COMING_TO_THE_BOIL.wireName()).isEqualTo("coming-to-the-boil");
        assertThat(ReminderName.CHILL_PLATES.wireName()).isEqualTo("chill-plates");
        assertThat(Suppression.PROBE_OUT_OF_PAN.wireName()).isEqualTo("probe-out-of-pan");
        assertThat(TestChange.UNDONE.wireName()).isEqualTo("undone");
    }

    @Test
    void anAlarm_knowsHowUrgentItIsAndHowLongItMustLast() {
        assertThat(AlarmName.SCORCH_RISK.priority()).isEqualTo(Priority.HIGH);
        assertThat(AlarmName.STALLED.priority()).isEqualTo(Priority.MEDIUM);
        assertThat(AlarmName.SCORCH_RISK.delays()).isEqualTo(new Delays(10, 45));
    }

    @Test
    void aReminder_comesAQuarterOfAnHourOrTenMinutesAhead() {
        assertThat(ReminderName.CHILL_PLATES.leadS()).isEqualTo(900);
        assertThat(ReminderName.WARM_JARS.leadS()).isEqualTo(600);
        assertThat(ReminderName.STIR.leadS()).isZero();
    }

    @ParameterizedTest
    @EnumSource(Stage.class)
    void thePanBoils_fromTheRollingBoilToPastTheGelPoint(Stage stage) {
        List<Stage> atOrPast = List.of(Stage.AT_GEL_POINT, Stage.PAST_GEL_POINT);
        List<Stage> before = List.of(Stage.ROLLING_BOIL, Stage.TEST_WINDOW);
        assertThat(stage.atOrPastGelPoint()).isEqualTo(atOrPast.contains(stage));
        assertThat(stage.boiling()).isEqualTo(atOrPast.contains(stage) || before.contains(stage));
    }

    @Test
    void anAlarmsText_isItsTitleAndItsAct() {
        assertThat(alarm("Do this.").text()).isEqualTo("It is so. Do this.");
        assertThat(alarm("").text()).isEqualTo("It is so.");
    }

    private static CookAlarm alarm(String act) {
        return new CookAlarm(
                "stalled-1", AlarmName.STALLED, AlarmState.NORMAL, 5, "It is so.", act, UNKNOWN, Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 15.01, Double.NaN})
    void aRiseThatNoPreserveHas_isRefused(double riseC) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CookSettings(BOILS, riseC, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 15.01, Double.NaN})
    void aWindowThatIsNone_isRefused(double windowC) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CookSettings(BOILS, 4, windowC));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 15})
    void theLimits_makeSense(double riseC) {
        CookSettings settings = new CookSettings(BOILS, riseC, 15);
        assertThat(settings.gelPointC()).isEqualTo(100 + riseC);
        assertThat(settings.windowFromC()).isEqualTo(85 + riseC);
    }

    @Test
    void theUsualWindow_isTwoDegreesFahrenheit() {
        assertThat(CookSettings.defaults().windowC()).isCloseTo(2 / 1.8, Offset.offset(1e-9));
        assertThat(new CookSettings(BOILS, 4).windowC())
                .isEqualTo(CookSettings.defaults().windowC());
    }

    @ParameterizedTest(name = "{0} °C: {1} °C")
    @CsvSource({"4.3, 4.3", "0.2, 1", "16, 15"})
    void whatTestsTaught_isBroughtWithinWhatMakesSense(double learntC, double riseC) {
        CookSettings aimed = new CookSettings(BOILS, 4).aimedAt(learntC, 0.2);
        assertThat(aimed).isEqualTo(new CookSettings(BOILS, riseC, 0.2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {59.9, 120.1, Double.NaN})
    void aPlateThatStandsForTooShortOrTooLong_isRefused(double plateS) {
        assertThatIllegalArgumentException().isThrownBy(() -> TestWord.begun("a", plateS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "ü", "01234567890123456789012345678901234567890"})
    void aNameThatNoTestHas_isRefused(String id) {
        assertThatIllegalArgumentException().isThrownBy(() -> TestWord.undone(id));
    }

    @Test
    void anAnswer_belongsToWhatWasSeen() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TestWord(TestWord.Says.SEEN, "a", 90, Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TestWord(TestWord.Says.BEGUN, "a", 90, Optional.of(TestAnswer.RUNS)));
        TestWord seen = TestWord.seen("A-1", TestAnswer.RUNS);
        assertThat(seen).isEqualTo(new TestWord(TestWord.Says.SEEN, "A-1", 90, Optional.of(TestAnswer.RUNS)));
        assertThat(TestWord.begun("a", 60)).isEqualTo(word(TestWord.Says.BEGUN, 60));
        assertThat(TestWord.begun("a", 120).plateS()).isEqualTo(120);
        assertThat(TestWord.unseen("a")).isEqualTo(word(TestWord.Says.UNSEEN, 90));
        assertThat(TestWord.undone("a")).isEqualTo(word(TestWord.Says.UNDONE, 90));
    }

    private static TestWord word(TestWord.Says says, double plateS) {
        return new TestWord(says, "a", plateS, Optional.empty());
    }

    @ParameterizedTest(name = "{0} to {2}, middle {1}")
    @CsvSource({"-0.1, 1, 2", "2, 1, 3", "0, 3, 2", "NaN, 1, 2"})
    void aForecastOutOfOrder_isRefused(double lowS, double etaS, double highS) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Forecast(0, etaS, lowS, highS, 0.01));
    }

    @Test
    void aForecastOfNow_isInOrder() {
        assertThat(new Forecast(0, 0, 0, 0, 0.01).etaS()).isZero();
    }

    private static SetTest test(Optional<SetTest.Seen> seen) {
        return new SetTest("a", 100, 90, UNKNOWN, UNKNOWN, UNKNOWN, seen);
    }

    private static Optional<SetTest.Seen> seen(TestAnswer answer) {
        return Optional.of(new SetTest.Seen(200, answer));
    }

    @Test
    void howTheTestsStand_isThatOfTheLast() {
        SetTest runs = test(seen(TestAnswer.RUNS));
        SetTest open = runs.with(Optional.empty());
        SetTest set = open.with(seen(TestAnswer.WRINKLES));
        assertThat(now(List.of()).last()).isEmpty();
        assertThat(now(List.of()).open()).isEmpty();
        assertThat(now(List.of(runs, open)).last()).contains(open);
        assertThat(now(List.of(runs, open)).open()).contains(open);
        assertThat(now(List.of(runs, open)).set()).isFalse();
        assertThat(now(List.of(open, runs)).open()).isEmpty();
        assertThat(now(List.of(open, runs)).set()).isFalse();
        assertThat(now(List.of(runs, set)).set()).isTrue();
        assertThat(set.plateDueT()).isEqualTo(190);
    }

    private static SetTestsNow now(List<SetTest> tests) {
        return new SetTestsNow(tests, CookSettings.defaults(), 4, UNKNOWN, false);
    }

    @Test
    void whenTheProbeIsGone_whatWasSeenIsKept_andNothingIsLive() {
        CookStatus live = new CookStatus(
                7,
                OptionalDouble.of(103),
                Quality.GOOD,
                Optional.of(new CookStatus.Seen(6, 103)),
                Stage.TEST_WINDOW,
                OptionalDouble.of(0.1),
                OptionalDouble.of(0.6),
                Optional.of(new Forecast(0, 60, 30, 90, 0.01)),
                WentIn.SOMETHING_COLD,
                true);
        assertThat(live.fresh()).isTrue();
        assertThat(live.stale().fresh()).isFalse();
        assertThat(live.stale())
                .isEqualTo(new CookStatus(
                        7,
                        UNKNOWN,
                        Quality.SILENT,
                        live.seen(),
                        Stage.TEST_WINDOW,
                        UNKNOWN,
                        UNKNOWN,
                        Optional.empty(),
                        WentIn.NOTHING,
                        true));
    }

    @Test
    void aStatus_happensWhenThePanWasSo() {
        CookStatus status = new CookMonitor(CookSettings.defaults(), 0).status().stale();
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        monitor.advanceTo(7_000_000_000L);
        assertThat(new CookEvent.StatusTaken(status).t()).isZero();
        assertThat(new CookEvent.StatusTaken(monitor.status()).t()).isEqualTo(7);
    }

    @Test
    void aProbe_speaksByItself_unlessSomebodyReadsIt() {
        assertThat(new ProbeTrust("pan", UNKNOWN)).isEqualTo(ProbeTrust.unchecked("pan"));
        assertThat(ProbeTrust.unchecked("pan").pace()).isEqualTo(Pace.BY_ITSELF);
        assertThat(ProbeTrust.byHand("pan")).isEqualTo(new ProbeTrust("pan", UNKNOWN, Pace.BY_HAND));
    }

    @ParameterizedTest(name = "by {0}: {1} times")
    @CsvSource({"-1, 1", "0, 1", "0.0009, 1", "0.001, 1.00050017", "1, 1.71828183"})
    void aClimbThatGrows_comesFurtherThanItBegan(double grown, double times) {
        assertThat(Steepening.times(grown)).isCloseTo(times, Offset.offset(1e-8));
    }

    @Test
    void words_areSaidAgainBeforeTheReadingThatCameAfterThem() {
        long origin = 5_000_000_000L;
        CookMonitor first = new CookMonitor(CookSettings.defaults(), origin);
        first.accept(Reading.good("pan", origin, 80, ""));
        first.say(TestWord.begun("a", 90), origin + 2_000_000_000L);
        first.say(TestWord.seen("a", TestAnswer.RUNS), origin + 4_000_000_000L);
        CookMonitor again = new CookMonitor(CookSettings.defaults(), origin);
        Retelling retelling = first.retelling(again);
        assertThat(retelling.until(origin + 2_000_000_000L)).isEmpty();
        assertThat(again.tests().tests()).isEmpty();
        assertThat(retelling.until(origin + 2_000_000_001L))
                .filteredOn(event -> event instanceof CookEvent.TestChanged)
                .singleElement()
                .satisfies(event -> assertThat(event.t()).isEqualTo(2));
        assertThat(retelling.until(origin + 4_000_000_000L)).isEmpty();
        retelling.until(Long.MAX_VALUE);
        assertThat(retelling.until(Long.MAX_VALUE)).isEmpty();
        assertThat(again.tests().tests())
                .singleElement()
                .satisfies(test -> assertThat(test.seen()).contains(new SetTest.Seen(4, TestAnswer.RUNS)));
    }
}
