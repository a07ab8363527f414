package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.MadePan;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.probe.Quality;

/** Whether the thermometer speaks and whether what it says can be. The limits are those of {@link ProbeWatch}, judgements. */
final class ProbeWatchTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private final AlarmBoard board = new AlarmBoard();
    private final List<CookEvent> events = new ArrayList<>();
    private ProbeWatch probe = new ProbeWatch(MadePan.SETTINGS, Pace.BY_ITSELF);
    private double t;

    private void every(double everyS, int times) {
        for (int i = 0; i < times; i++) {
            probe.accept(t, 101 + 0.1 * (i % 3), true);
            t += everyS;
        }
    }

    private boolean is(AlarmName name, double atT) {
        probe.watch(atT, board, UNKNOWN, () -> 0, 0.1, events);
        return board.present(name);
    }

    @ParameterizedTest(name = "every {0} s: silent after {1} s")
    @CsvSource({"0.1, 8", "1, 8", "1.6, 8", "2, 10", "10, 50"})
    void itIsSilent_afterFiveOfItsIntervals_orEightSeconds(double everyS, double silentS) {
        every(everyS, 8);
        double heardT = t - everyS;
        assertThat(probe.heardAt(heardT + silentS - 0.01)).isTrue();
        assertThat(probe.heardAt(heardT + silentS + 0.01)).isFalse();
        assertThat(probe.freshAt(heardT + silentS - 0.01)).isTrue();
        assertThat(probe.freshAt(heardT + silentS + 0.01)).isFalse();
        assertThat(probe.latest(heardT)).isEqualTo(Quality.GOOD);
        assertThat(probe.latest(heardT + silentS + 0.01)).isEqualTo(Quality.SILENT);
    }

    @Test
    void exactlyAtItsLimit_itIsNotSilentYet() {
        every(1, 8);
        assertThat(probe.heardAt(15)).isTrue();
        assertThat(probe.freshAt(15)).isTrue();
    }

    @Test
    void whosePaceIsNotKnownYet_hasHalfAMinute() {
        assertThat(probe.heardAt(0)).isFalse();
        every(1, 2);
        assertThat(probe.heardAt(31)).isTrue();
        assertThat(probe.heardAt(31.1)).isFalse();
        every(1, 1);
        assertThat(probe.heardAt(10)).isTrue();
        assertThat(probe.heardAt(10.1)).isFalse();
    }

    @Test
    void itsPace_isThatOfItsLastFiveIntervals() {
        every(1, 10);
        every(10, 4);
        // of five intervals three are of ten seconds
        assertThat(probe.heardAt(t - 10 + 50)).isTrue();
        every(1, 3);
        assertThat(probe.heardAt(t - 1 + 49)).isTrue();
        every(1, 2);
        assertThat(probe.heardAt(t - 1 + 9)).isFalse();
    }

    @ParameterizedTest(name = "every {0} s: silent after {1} s")
    @CsvSource({"30, 180", "60, 180", "120, 300", "400, 600"})
    void whoReadsByHand_hasTwoAndAHalfIntervalsAtLeastThreeAndAtMostTenMinutes(double everyS, double silentS) {
        probe = new ProbeWatch(MadePan.SETTINGS, Pace.BY_HAND);
        probe.accept(0, 101, true);
        assertThat(probe.heardAt(300)).isTrue();
        assertThat(probe.heardAt(301)).isFalse();
        t = everyS;
        every(everyS, 6);
        assertThat(probe.heardAt(t - everyS + silentS)).isTrue();
        assertThat(probe.heardAt(t - everyS + silentS + 1)).isFalse();
    }

    @Test
    void whoTypesTwiceWithinTwentySeconds_hasLookedOnce() {
        probe = new ProbeWatch(MadePan.SETTINGS, Pace.BY_HAND);
        for (int i = 0; i < 8; i++) {
            probe.accept(200 * i, 101, true);
            probe.accept(200 * i + 19, 101, true);
        }
        // 181 s apart, and two and a half times that
        assertThat(probe.heardAt(1419 + 452)).isTrue();
        assertThat(probe.heardAt(1419 + 453)).isFalse();
    }

    /** Says what it shows that many seconds after the last time. */
    private void says(double afterS, double c) {
        t += afterS;
        probe.accept(t, c, true);
    }

    /** Says only that it moved, one second or some later, to and fro between two steps. */
    private void flickers(int times) {
        for (int i = 0; i < times; i++) {
            says(i % 3 == 0 ? 4 : 1, 101 + 0.1 * (i % 2));
        }
    }

    private boolean waitsAMinute() {
        boolean heard = probe.heardAt(t + 60);
        assertThat(probe.heardAt(t + (heard ? 60.01 : 8.01))).isFalse();
        assertThat(probe.heardAt(t + 8)).isTrue();
        return heard;
    }

    @Test
    void whatSpeaksOnlyWhenItsReadingMoves_isSilentAfterAMinute() {
        flickers(12);
        assertThat(waitsAMinute()).as("eleven moves").isFalse();
        flickers(1);
        assertThat(waitsAMinute()).as("twelve").isTrue();
        assertThat(is(AlarmName.PROBE_SILENT, t + 60)).isFalse();
        assertThat(is(AlarmName.PROBE_SILENT, t + 61)).isTrue();
    }

    @Test
    void aSignOfLife_isNoReadingThatStayedTheSame_butWhatComesAsSoonAsTheOthersIs() {
        flickers(8);
        says(5, 101.1);
        flickers(8);
        assertThat(waitsAMinute()).isTrue();
        says(1, 101.1);
        assertThat(waitsAMinute()).isFalse();
    }

    @Test
    void whatWasLostOnTheWay_breaksNoRow_andWhatSpokeOfChangesForLongMayStayTheSameOnce() {
        flickers(8);
        probe.acceptBad(Quality.NOT_FINITE);
        says(1, 101.1);
        flickers(30);
        assertThat(waitsAMinute()).isTrue();
        says(1, 101.1);
        assertThat(waitsAMinute()).as("once in thirty").isTrue();
        says(1, 101.1);
        assertThat(waitsAMinute()).as("twice").isFalse();
    }

    @Test
    void readingsThatWaitedSomewhere_doNotMakeTheOthersSignsOfLife() {
        for (int i = 0; i < 40; i++) {
            says(0.001, 101);
        }
        for (int i = 0; i < 60; i++) {
            says(i % 3 == 0 ? 4 : 1, 101 + 0.1 * (i / 2 % 2));
        }
        assertThat(waitsAMinute()).isFalse();
    }

    /** Forty times, one second or some later, what such a thermometer shows. */
    private boolean speaksOfChanges(double lateS, DoubleUnaryOperator c) {
        for (int i = 0; i < 40; i++) {
            says(i % 3 == 0 ? lateS : 1, c.applyAsDouble(i));
        }
        return probe.heardAt(t + 60);
    }

    /** Warms by half a degree with each word, then by so much with the last. */
    private boolean waitsForMoreThanEightSeconds(int moves, double lastC) {
        for (int i = 0; i < moves; i++) {
            says(1, 80 + 0.5 * i);
        }
        says(1, 80 + 0.5 * (moves - 1) + 0.1);
        says(1, 80 + 0.5 * (moves - 1) + 0.1 + lastC);
        boolean heard = probe.heardAt(t + 8.01);
        assertThat(probe.heardAt(t + 35)).isEqualTo(heard);
        assertThat(probe.heardAt(t + 35.01)).isFalse();
        return heard;
    }

    @Test
    void whatNeverStayedTheSame_andSlackens_mayYetSpeakOfChangesOnly() {
        assertThat(waitsForMoreThanEightSeconds(11, 0.2)).isTrue();
        assertThat(new ProbeWatchTest().waitsForMoreThanEightSeconds(10, 0.2))
                .as("eleven moves")
                .isFalse();
        assertThat(new ProbeWatchTest().waitsForMoreThanEightSeconds(11, 0.3))
                .as("three steps")
                .isFalse();
    }

    @ParameterizedTest(name = "{0} times: {1}")
    @CsvSource({"4, true", "5, false"})
    void whatOftenSaidTheSameAgain_isSilentAfterEightSeconds(int repeats, boolean waits) {
        for (int i = 0; i <= repeats; i++) {
            says(1, 79);
        }
        assertThat(waitsForMoreThanEightSeconds(11, 0.2)).isEqualTo(waits);
    }

    @Test
    void whatOnlyClimbs_orSpeaksAtAnEvenPace_orMovesByMoreThanItsSteps_doesNotSpeakOfChangesOnly() {
        assertThat(speaksOfChanges(4, i -> 60 + 0.1 * i)).isFalse();
        assertThat(speaksOfChanges(2, i -> 101 + 0.1 * (i % 2))).isFalse();
        assertThat(speaksOfChanges(4, i -> 101 + 0.3 * (i % 2))).isFalse();
        assertThat(speaksOfChanges(4, i -> 101 + 0.1 * (i % 2))).isTrue();
    }

    @Test
    void whatSpeaksOnlyOfChanges_stillShowsWhatItSaidLast_untilItIsSilent() {
        flickers(12);
        assertThat(probe.heldC(t + 10)).as("nothing is known of it").isEmpty();
        flickers(1);
        assertThat(probe.heldC(t + 1)).as("it has just been read").isEmpty();
        assertThat(probe.heldC(t + 1.01)).hasValue(101);
        assertThat(probe.heldC(t + 60)).hasValue(101);
        assertThat(probe.heldC(t + 61)).isEmpty();
        probe.acceptBad(Quality.NOT_FINITE);
        assertThat(probe.heldC(t + 10)).as("what it says now cannot be read").isEmpty();
    }

    @Test
    void whatWasSaidWhileNobodyListened_mayHaveMovedOn() {
        flickers(13);
        probe.listenSince(t + 40);
        assertThat(probe.heldC(t + 41)).isEmpty();
        says(41, 101.1);
        assertThat(probe.heldC(t + 10)).hasValue(101.1);
    }

    /** Somebody types when they look, which is no word on what the thermometer did meanwhile. */
    @Test
    void whatIsTypedByHand_isNeverHeld() {
        probe = new ProbeWatch(MadePan.SETTINGS, Pace.BY_HAND);
        for (int i = 0; i < 40; i++) {
            says(i % 3 == 0 ? 120 : 30, 101 + i % 2);
        }
        assertThat(probe.heldC(t + 10)).isEmpty();
    }

    @Test
    void silence_isAnAlarm_andOverWithTheNextReading() {
        assertThat(is(AlarmName.PROBE_SILENT, 100)).as("it was never heard").isFalse();
        t = 100;
        every(1, 8);
        assertThat(is(AlarmName.PROBE_SILENT, 115)).isFalse();
        assertThat(is(AlarmName.PROBE_SILENT, 116)).isTrue();
        assertThat(((CookEvent.AlarmChanged) events.get(0)).alarm().title())
                .isEqualTo("No word from the probe since {clock:107}.");
        probe.accept(117, 101, true);
        assertThat(is(AlarmName.PROBE_SILENT, 117)).isFalse();
    }

    @Test
    void whatNobodyListenedTo_wasNotSilent() {
        every(1, 8);
        probe.listenSince(100);
        assertThat(is(AlarmName.PROBE_SILENT, 108)).isFalse();
        assertThat(is(AlarmName.PROBE_SILENT, 109)).isTrue();
        probe.listenSince(200);
        assertThat(is(AlarmName.PROBE_SILENT, 201)).as("it was before").isTrue();
    }

    @Test
    void whatCannotBe_tellsNothingOfThePan() {
        every(1, 8);
        assertThat(probe.seen().orElseThrow()).isEqualTo(new CookStatus.Seen(7, 101.1));
        assertThat(probe.accept(8, 180, true)).isFalse();
        assertThat(probe.latest(8)).isEqualTo(Quality.SPIKE);
        assertThat(probe.seen().orElseThrow().t()).isEqualTo(7);
        assertThat(probe.accept(9, 101, true)).isTrue();
        assertThat(probe.latest(9)).isEqualTo(Quality.GOOD);
        probe.acceptBad(Quality.NOT_FINITE);
        assertThat(probe.latest(9)).isEqualTo(Quality.NOT_FINITE);
    }

    @Test
    void whatCannotBe_isAnAlarmWhileItIsHeard() {
        every(1, 8);
        for (int i = 8; i < 20; i++) {
            probe.accept(i, 200, true);
            is(AlarmName.PROBE_IMPLAUSIBLE, i);
        }
        assertThat(is(AlarmName.PROBE_IMPLAUSIBLE, 20)).isTrue();
        assertThat(probe.heardAt(20)).isTrue();
        assertThat(probe.freshAt(20)).isFalse();
        for (int i = 21; i < 40; i++) {
            is(AlarmName.PROBE_IMPLAUSIBLE, i);
        }
        assertThat(is(AlarmName.PROBE_IMPLAUSIBLE, 40)).isFalse();
    }

    /** A reading a second, each with its alarms. */
    private void watch(int seconds, DoubleUnaryOperator c, OptionalDouble expectedPerMinC) {
        for (int i = 0; i < seconds; i++) {
            probe.accept(t, c.applyAsDouble(t), true);
            probe.watch(t, board, expectedPerMinC, () -> 0, 0.1, events);
            t++;
        }
    }

    @Test
    void aReadingThatShouldMoveAndDoesNot_isStuck_firstSuspectAndThenAnAlarm() {
        probe.follow(Stage.ROLLING_BOIL, 0);
        watch(60, t -> 101 + 0.1 * (t % 3), OptionalDouble.of(0.12));
        assertThat(probe.suspectStuck()).isFalse();
        // two steps of 0.1 °C take 100 s at 0.12 °C a minute
        watch(60, t -> 101, OptionalDouble.of(0.12));
        assertThat(probe.suspectStuck()).isTrue();
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
        watch(45, t -> 101, OptionalDouble.of(0.12));
        assertThat(board.present(AlarmName.PROBE_STUCK)).isTrue();
        watch(10, t -> 101.2 + 0.1 * (t % 2), OptionalDouble.of(0.12));
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
    }

    @Test
    void whoReadsByHand_isNeverStuck() {
        probe = new ProbeWatch(MadePan.SETTINGS, Pace.BY_HAND);
        probe.follow(Stage.ROLLING_BOIL, 0);
        watch(60, t -> 101 + 0.1 * (t % 3), OptionalDouble.of(0.12));
        watch(200, t -> 101, OptionalDouble.of(0.12));
        assertThat(probe.suspectStuck()).isFalse();
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
    }

    @Test
    void outOfThePan_nothingIsStuck() {
        probe.follow(Stage.ROLLING_BOIL, 0);
        watch(60, t -> 101 + 0.1 * (t % 3), OptionalDouble.of(0.12));
        for (int i = 0; i < 2; i++) {
            board.update(t + i, AlarmName.PROBE_OUT_OF_PAN, Condition.PRESENT, () -> AlarmText.NONE, events);
        }
        watch(200, t -> 101, OptionalDouble.of(0.12));
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
    }

    @Test
    void whileItWarms_itsOwnPaceCounts() {
        probe.follow(Stage.WARMING, 0);
        for (int i = 0; i < 60; i++) {
            probe.climbs(6);
            watch(1, t -> 40 + 0.1 * t, UNKNOWN);
        }
        watch(59, t -> 46, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
        watch(3, t -> 46, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK)).isTrue();
        assertThat(((CookEvent.AlarmChanged) events.get(0)).alarm().title()).contains("though the pan is on its way");
    }

    @Test
    void aPanThatCoolsWhileItWarms_orOneOfAnotherStage_isExpectedToDoNothing() {
        for (Stage stage : new Stage[] {Stage.WARMING, Stage.SIMMERING}) {
            ProbeWatchTest one = new ProbeWatchTest();
            one.probe.follow(stage, 0);
            for (int i = 0; i < 60; i++) {
                one.probe.climbs(stage == Stage.WARMING ? -6 : 6);
                one.watch(1, t -> 40 + 0.1 * t, UNKNOWN);
            }
            one.watch(300, t -> 46, UNKNOWN);
            assertThat(one.board.present(AlarmName.PROBE_STUCK)).isFalse();
        }
    }

    @Test
    void aPaceThatIsSeenWhileTheReadingStands_countsNoMore() {
        probe.follow(Stage.WARMING, 0);
        watch(60, t -> 40 + 0.1 * t, UNKNOWN);
        probe.climbs(0);
        watch(11, t -> 46, UNKNOWN);
        probe.climbs(6);
        watch(200, t -> 46, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
    }

    @Test
    void whatStillnessTaught_isForgottenWithTheBoil() {
        probe.follow(Stage.ROLLING_BOIL, 0);
        // as long as the slowest pan takes for a step and a half
        watch(240, t -> 101 + 0.1 * (t % 4), UNKNOWN);
        watch(65, t -> 101, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK))
                .as("it flickered before")
                .isTrue();
        probe.follow(Stage.TEST_WINDOW, t);
        watch(5, t -> 101, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK)).isTrue();
        probe.follow(Stage.OFF_THE_HEAT, t);
        watch(10, t -> 101, UNKNOWN);
        assertThat(board.present(AlarmName.PROBE_STUCK)).isFalse();
    }
}
