package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Something cold in the pan, second by second. The limits are those of {@link ColdAddition}, judgements without a source. */
final class ColdAdditionTest {
    private static final double BOILS_C = 102;

    private final ColdAddition cold = new ColdAddition();
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
            cold.endSecond(
                    new Signals(t, c, c, at.quick(), at.steady(), at.peakC(), at.earlierPeakC(), at.fallC(), stepC),
                    stages);
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
    void aPanThatWarmsForAQuarterOfAnHour_isJustSoHot() {
        stand(60, BOILS_C);
        stand(1, 99);
        assertThat(stand(900, 99.5)).isTrue();
        assertThat(stand(1, 99.5)).isFalse();
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
