package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/** Something cold in the pan, second by second. The limits are those of {@link ColdAddition}, judgements without a source. */
final class ColdAdditionTest {
    private static final double BOILS_C = 102;

    private final ColdAddition cold = new ColdAddition(100);
    private Stages stages = boils(BOILS_C);
    private double t;

    private static Stages boils(double c) {
        Stages stages = new Stages(MadePan.SETTINGS);
        for (int t = -30; t < 0; t++) {
            stages.follow(MadeSignals.at(t, c));
        }
        return stages;
    }

    /** Lets it stand at a height for some seconds; whether something cold is seen afterwards. */
    private boolean stand(int seconds, double c) {
        return stand(seconds, c, 0.01);
    }

    private boolean stand(int seconds, double c, double stepC) {
        for (int i = 0; i < seconds; i++) {
            Signals at = MadeSignals.at(t, c);
            cold.endSecond(new Signals(t, c, c, at.quick(), at.steady(), at.peakC(), at.earlierPeakC(), stepC), stages);
            t++;
        }
        return cold.seen();
    }

    @Test
    void itIsSeen_fromWhenThePanWarmsByHalfADegree_untilItIsAlmostBack() {
        stand(60, BOILS_C);
        assertThat(stand(1, 99.5)).isFalse();
        assertThat(stand(1, 99.99)).isFalse();
        assertThat(stand(1, 100)).isTrue();
        assertThat(stand(100, 99.6)).isTrue();
        assertThat(stand(1, 101.49)).isTrue();
        assertThat(stand(1, 101.5)).isFalse();
        assertThat(stand(10, 101)).isFalse();
    }

    @Test
    void whatFallsByLessThanTwoAndAHalfDegrees_isNothingCold() {
        stand(60, BOILS_C);
        stand(5, 99.51);
        assertThat(stand(10, 100.5)).isFalse();
    }

    @ParameterizedTest(name = "within {0} s: {1}")
    @CsvSource({"30, true", "31, false"})
    void itFalls_withinHalfAMinute(int seconds, boolean seen) {
        stand(60, BOILS_C);
        stand(seconds - 1, 99.6);
        stand(1, 99.5);
        assertThat(stand(1, 100.1)).isEqualTo(seen);
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"40, true", "41, false"})
    void itsBottom_isReachedWithinFortySeconds(int seconds, boolean seen) {
        stand(60, BOILS_C);
        stand(seconds, 99);
        stand(1, 98);
        assertThat(stand(1, 98.5)).isEqualTo(seen);
    }

    @Test
    void aPanThatWarmedAndThenFallsLower_isNotWarmingBack() {
        stand(60, BOILS_C);
        stand(1, 99);
        assertThat(stand(50, 99.6)).isTrue();
        assertThat(stand(1, 98)).isFalse();
        assertThat(stand(10, 99)).isFalse();
    }

    @Test
    void aBottomThatLasts_isReachedWhenItBegins() {
        stand(60, BOILS_C);
        stand(100, 99);
        assertThat(stand(1, 99.5)).isTrue();
    }

    @Test
    void aCoarseThermometer_mustShowTwoOfItsSteps() {
        stand(60, BOILS_C, 0.5);
        stand(5, 99, 0.5);
        assertThat(stand(5, 99.5, 0.5)).isFalse();
        assertThat(stand(5, 99.9, 0.5)).isFalse();
        assertThat(stand(5, 100, 0.5)).isTrue();
    }

    @ParameterizedTest(name = "after {0} s: {1}")
    @CsvSource({"151, true", "152, false"})
    void whatHasNotWarmedAfterTwoAndAHalfMinutes_wasNothingCold(int seconds, boolean seen) {
        stand(60, BOILS_C);
        stand(seconds, 99);
        assertThat(stand(1, 99.5)).isEqualTo(seen);
    }

    @Test
    void aThinPanThatWarmsForAQuarterOfAnHour_isJustSoHot() {
        stages = boils(100.9);
        stand(60, 100.9);
        stand(1, 98);
        assertThat(stand(900, 98.5)).isTrue();
        assertThat(cold.late()).isFalse();
        assertThat(stand(1, 98.5)).isFalse();
    }

    @ParameterizedTest(name = "from {0} °C: {1}")
    @CsvSource({"100.99, false", "101, true"})
    void intoAPanThatThin_goesItsSugar(double boilsC, boolean late) {
        stages = boils(boilsC);
        stand(60, boilsC);
        stand(1, 95);
        stand(200, 97);
        assertThat(cold.stalls()).isEqualTo(late);
    }

    @ParameterizedTest(name = "{0} °C a minute: {1}")
    @CsvSource({"0.95, true", "1.05, false"})
    void aPanThatNeedsMoreThanSixMinutesInAll_isLate_onceTwoMinutesTell(double perMinC, boolean late) {
        // 8 °C below the boil of water and 6 °C when it is asked: six minutes less two leave four, for 6.2 and 5.9 °C
        stand(60, BOILS_C);
        for (int s = 0; s < 120; s++) {
            stand(1, 94.3 + perMinC * s / 60);
            assertThat(cold.late()).isFalse();
        }
        stand(1, 94.3 + 2 * perMinC);
        assertThat(cold.stalls()).isEqualTo(late);
    }

    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"4.99, false", "5, true"})
    void whatFellByLess_mayHaveJumped(double byC, boolean late) {
        stand(60, BOILS_C);
        stand(1, BOILS_C - byC);
        assertThat(stand(200, BOILS_C - byC + 0.6)).isTrue();
        assertThat(cold.stalls()).isEqualTo(late);
    }

    @Test
    void whatIsLate_staysSo_untilItIsThreeTenthsAboveTheBoilOfWater() {
        stand(60, BOILS_C);
        stand(1, 97);
        stand(200, 99);
        assertThat(stand(600, 100.29)).isTrue();
        assertThat(cold.stalls()).isTrue();
        stand(1, 101.2);
        assertThat(cold.stalls()).isFalse();
        assertThat(cold.late()).isTrue();
    }

    @Test
    void theWords_sayHowFarItIs_andHowLongThatTakes() {
        stand(60, BOILS_C);
        for (int s = 0; s <= 130; s++) {
            stand(1, 94.3 + 0.6 * s / 60);
        }
        assertThat(cold.text(MadeSignals.at(t - 1, 95.6)))
                .isEqualTo(new AlarmText(
                        "Something cold went in at {clock:60}, and the pan still does not boil.",
                        "At this pace it takes until about {clock:660}: turn the heat up?"));
    }

    @ParameterizedTest(name = "{0} °C higher, steps of {1} °C")
    @CsvSource({"0.29, 0.1", "0.7, 0.5"})
    void theWords_sayThatItWarmsNoFurther(double higherC, double stepC) {
        stand(60, BOILS_C, stepC);
        stand(1, 96, stepC);
        stand(190, 98, stepC);
        stand(1, 98 + higherC, stepC);
        Signals at = MadeSignals.at(t - 1, 98 + higherC);
        Signals now =
                new Signals(t - 1, 98 + higherC, 98, at.quick(), at.steady(), at.peakC(), at.earlierPeakC(), stepC);
        assertThat(cold.text(now).title()).startsWith("Something cold went in at {clock:60},");
        assertThat(cold.text(now).act()).contains("warms no further");
    }

    @ParameterizedTest(name = "by {0} °C in the last minute: {1}")
    @CsvSource({"0.79, false", "0.81, true"})
    void aPanThatBoilsLowerThanBefore_isBack(double byC, boolean seen) {
        stand(60, BOILS_C);
        stand(1, 97);
        assertThat(stand(60, 100.4)).isTrue();
        assertThat(stand(1, 100.4 + byC)).isEqualTo(seen);
    }

    @Test
    void belowTheBoil_aPanThatWarmsNoMore_isNotBack() {
        stand(60, BOILS_C);
        stand(1, 97);
        assertThat(stand(70, 100.29)).isTrue();
        assertThat(stand(1, 100.31)).isFalse();
    }

    @Test
    void inTheWindow_aFallIsATest() {
        stages = boils(103);
        stand(60, 103);
        stand(5, 99);
        assertThat(stand(10, 100)).isFalse();
    }

    @Test
    void beforeTheBoil_nothingIsTold() {
        stages = boils(95);
        stand(60, 95);
        stand(5, 90);
        assertThat(stand(10, 92)).isFalse();
    }

    @Test
    void readingsThatBeginAnew_areNeitherAFallNorAWayBack() {
        stand(60, BOILS_C);
        cold.restart();
        stand(5, 99);
        assertThat(stand(5, 100)).isFalse();
        stand(40, BOILS_C);
        stand(1, 99);
        assertThat(stand(1, 99.5)).isTrue();
        cold.restart();
        assertThat(cold.seen()).isFalse();
        assertThat(stand(5, 99.6)).isFalse();
    }
}
