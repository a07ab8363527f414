package spoonfall.cook.settest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.MadePan;
import spoonfall.cook.SetTest;
import spoonfall.cook.Stage;
import spoonfall.cook.TestChange;
import spoonfall.cook.TestWord;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.settest.TestAnswer;

/** What words on set tests leave behind, and what must not be called because of them. The times are those of {@link SetTests}. */
final class SetTestsWordsTest {
    private static final CookSettings SETTINGS = MadePan.SETTINGS;

    private final SetTests tests = new SetTests(SETTINGS);

    private static SetTests.Pan pan(double c, double perMinC) {
        return new SetTests.Pan(OptionalDouble.of(c), OptionalDouble.of(0.63), OptionalDouble.of(perMinC));
    }

    private Optional<TestChange> say(double t, TestWord word) {
        return tests.say(t, Math.round(1000 * t), word, pan(103.5, 0.2)).map(CookEvent.TestChanged::change);
    }

    private void begin(double t) {
        say(t, TestWord.begun("a", 90));
    }

    private void answer(double t, TestAnswer answer) {
        say(t, TestWord.seen("a", answer));
    }

    @Test
    void aTest_isWhatThePanWasWhenItBegan() {
        begin(100);
        SetTest test = tests.now().orElseThrow();
        assertThat(test).isEqualTo(tests.all().get(0));
        assertThat(test.riseC()).hasValue(3.5);
        assertThat(test.temperatureC()).hasValue(103.5);
        assertThat(test.solids()).hasValue(0.63);
        assertThat(test.plateDueT()).isEqualTo(190);
        assertThat(test.set()).isFalse();
        answer(200, TestAnswer.RUNS);
        assertThat(tests.now()).isEmpty();
        assertThat(tests.all().get(0).seen()).contains(new SetTest.Seen(200, TestAnswer.RUNS));
        assertThat(tests.said()).extracting(SetTests.Said::atMillis).containsExactly(100_000L, 200_000L);
    }

    @Test
    void everyWord_saysWhatItChanged() {
        assertThat(say(1, TestWord.begun("a", 90))).contains(TestChange.BEGUN);
        assertThat(say(2, TestWord.seen("a", TestAnswer.RUNS))).contains(TestChange.SEEN);
        assertThat(say(3, TestWord.unseen("a"))).contains(TestChange.UNSEEN);
        assertThat(say(4, TestWord.unseen("a"))).isEmpty();
        assertThat(say(5, TestWord.undone("b"))).isEmpty();
        assertThat(say(6, TestWord.undone("a"))).contains(TestChange.UNDONE);
        assertThat(say(7, TestWord.undone("a"))).isEmpty();
        assertThat(say(8, TestWord.begun("a", 90))).isEmpty();
        assertThat(say(9, TestWord.seen("a", TestAnswer.RUNS)))
                .as("it was never")
                .isEmpty();
    }

    @Test
    void anAnswer_isToTheTestThatGoesOn_whateverItsName() {
        begin(1);
        assertThat(say(2, TestWord.seen("other", TestAnswer.RUNS))).contains(TestChange.SEEN);
        assertThat(tests.all())
                .singleElement()
                .satisfies(test -> assertThat(test.id()).isEqualTo("a"));
        assertThat(say(3, TestWord.seen("b", TestAnswer.WRINKLES)))
                .as("one that took no time")
                .contains(TestChange.SEEN);
        assertThat(tests.set()).isTrue();
        assertThat(say(4, TestWord.begun("c", 90))).as("it is set").isEmpty();
        assertThat(say(5, TestWord.seen("d", TestAnswer.RUNS))).isEmpty();
    }

    @Test
    void anAnswerOfBefore_isNotToTheTestThatGoesOn_norIsATestBegunTwice() {
        begin(1);
        answer(2, TestAnswer.RUNS);
        assertThat(say(3, TestWord.begun("a", 90))).isEmpty();
        assertThat(say(4, TestWord.begun("b", 90))).contains(TestChange.BEGUN);
        assertThat(say(5, TestWord.seen("a", TestAnswer.WRINKLES))).isEmpty();
        assertThat(tests.set()).isFalse();
    }

    @Test
    void onlyTheLastTest_canBeTakenBack() {
        begin(1);
        answer(2, TestAnswer.RUNS);
        say(3, TestWord.seen("b", TestAnswer.THICKENS));
        assertThat(say(4, TestWord.unseen("a"))).isEmpty();
        assertThat(say(4, TestWord.undone("a"))).isEmpty();
        assertThat(say(5, TestWord.undone("b"))).contains(TestChange.UNDONE);
        assertThat(say(6, TestWord.unseen("a"))).contains(TestChange.UNSEEN);
    }

    @Test
    void notYet_aimsHigher_andSetLeavesTheAim() {
        assertThat(tests.aim()).isSameAs(SETTINGS);
        double firstC = tests.nextRiseC();
        answer(1, TestAnswer.RUNS);
        assertThat(tests.notYet()).isTrue();
        double nextC = tests.nextRiseC();
        assertThat(nextC).isGreaterThan(Math.max(3.5, firstC));
        assertThat(tests.aim().riseC()).isEqualTo(nextC);
        say(2, TestWord.seen("b", TestAnswer.WRINKLES));
        assertThat(tests.notYet()).isFalse();
        assertThat(tests.set()).isTrue();
        assertThat(tests.nextRiseC()).isEqualTo(nextC);
    }

    @ParameterizedTest(name = "{0} °C a minute: {1} °C ahead")
    @CsvSource({"0.2, 0.09", "0.1, 0.05", "0, 0.05", "0.8, 0.36", "1, 0.4"})
    void theNextCall_comes27SecondsAhead(double perMinC, double aheadC) {
        tests.say(1, 1000, TestWord.seen("a", TestAnswer.RUNS), pan(103.5, perMinC));
        assertThat(tests.aim().windowC()).isCloseTo(aheadC, Offset.offset(1e-9));
    }

    @Test
    void withoutAReading_aTestTeachesNothing() {
        OptionalDouble unknown = OptionalDouble.empty();
        tests.say(1, 1000, TestWord.seen("a", TestAnswer.RUNS), new SetTests.Pan(unknown, unknown, unknown));
        assertThat(tests.all().get(0).riseC()).isEmpty();
        assertThat(tests.aim()).isSameAs(SETTINGS);
    }

    @ParameterizedTest(name = "{0} s after an answer")
    @CsvSource({"29, true, true", "30, false, true", "119, false, true", "120, false, false"})
    void anAnswer_holdsTheCalls(double afterS, boolean testing, boolean away) {
        begin(100);
        answer(160, TestAnswer.RUNS);
        assertThat(tests.testing(160 + afterS, Stage.ROLLING_BOIL)).isEqualTo(testing);
        assertThat(tests.away(160 + afterS, Stage.ROLLING_BOIL)).isEqualTo(away);
    }

    @Test
    void withoutATest_nothingIsHeld() {
        assertThat(tests.testing(1, Stage.OFF_THE_HEAT)).isFalse();
        assertThat(tests.away(1, Stage.OFF_THE_HEAT)).isFalse();
        assertThat(tests.paused()).isFalse();
        assertThat(tests.paused(1, false)).isFalse();
        assertThat(tests.notYet()).isFalse();
    }

    @Test
    void aTestThatNobodyAnswers_isOverWhenThePanHasBoiledOnFor45Seconds() {
        begin(100);
        tests.paused(100, true);
        for (int t = 101; t < 145; t++) {
            assertThat(tests.paused(t, true)).isTrue();
            assertThat(tests.paused()).isTrue();
            assertThat(tests.away(t, Stage.ROLLING_BOIL)).isTrue();
        }
        assertThat(tests.paused(145, true)).isFalse();
        assertThat(tests.paused()).isFalse();
        assertThat(tests.away(145, Stage.ROLLING_BOIL)).isFalse();
        assertThat(tests.testing(145, Stage.ROLLING_BOIL)).isFalse();
        assertThat(tests.away(145, Stage.OFF_THE_HEAT)).isTrue();
    }

    @Test
    void howLongItBoilsOn_countsFromWhenItWasBackLast_andFromTheTest() {
        tests.paused(50, true);
        begin(100);
        assertThat(tests.paused(120, true)).as("it boiled before").isTrue();
        tests.paused(130, false);
        tests.paused(131, true);
        assertThat(tests.paused(175, true)).isTrue();
        assertThat(tests.paused(176, true)).isFalse();
    }

    @Test
    void afterAnAnswer_noWaterLeavesUntilThePanIsBack_orForFourMinutes() {
        begin(100);
        answer(160, TestAnswer.RUNS);
        assertThat(tests.paused(200, false)).isTrue();
        assertThat(tests.paused(201, true)).isFalse();
        assertThat(tests.paused(202, false)).as("until the next test").isFalse();
        SetTestsWordsTest never = new SetTestsWordsTest();
        never.begin(100);
        never.answer(160, TestAnswer.RUNS);
        assertThat(never.tests.paused(399, false)).isTrue();
        assertThat(never.tests.paused(400, false)).isFalse();
    }

    @Test
    void thePlate_isCalledWhenItsTimeIsUp_untilItIsAnswered() {
        AlarmBoard board = new AlarmBoard();
        List<CookEvent> events = new ArrayList<>();
        begin(100);
        tests.endSecond(189, board, events);
        assertThat(events).isEmpty();
        tests.endSecond(190, board, events);
        assertThat(board.present(AlarmName.PLATE_READY)).isTrue();
        assertThat(board.standing().get(0).text())
                .isEqualTo("The plate has had its 90 seconds. Push it with a finger and say what you see.");
        answer(200, TestAnswer.RUNS);
        tests.endSecond(200, board, events);
        assertThat(board.present(AlarmName.PLATE_READY)).isFalse();
    }
}
