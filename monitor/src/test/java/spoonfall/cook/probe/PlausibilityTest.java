package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.Condition;
import spoonfall.probe.Quality;

/** What a reading is worth, one by one. Water boils at 100 °C; the limits are those of {@link Plausibility}, judgements. */
final class PlausibilityTest {
    private final Plausibility plausibility = new Plausibility(100);

    private Quality boiling(double t, double c) {
        return plausibility.judge(t, c, true);
    }

    /** What comes second by second from 0 on; what the last is worth. */
    private Quality boilingEachSecond(double... temperaturesC) {
        Quality last = Quality.SILENT;
        for (int t = 0; t < temperaturesC.length; t++) {
            last = boiling(t, temperaturesC[t]);
        }
        return last;
    }

    private Quality warming(double t, double c) {
        return plausibility.judge(t, c, false);
    }

    @ParameterizedTest(name = "{0} s later, {1} °C further: {2}")
    @CsvSource({
        "1, 5.5, GOOD",
        "1, -5.5, GOOD",
        "1, 5.51, SPIKE",
        "1, -5.51, SPIKE",
        "10, 19, GOOD",
        "10, 19.1, SPIKE",
        "0, 4, GOOD",
        "0, 4.1, SPIKE"
    })
    void aReading_mayLieSoFarFromTheLast(double afterS, double byC, Quality expected) {
        boiling(100, 100);
        assertThat(boiling(100 + afterS, 100 + byC)).isEqualTo(expected);
    }

    @Test
    void howFarItMayBe_countsFromWhenItWasHeardLast() {
        warming(0, 50);
        warming(10, 60);
        assertThat(warming(11, 65.5)).isEqualTo(Quality.GOOD);
        assertThat(warming(12, 71.1)).isEqualTo(Quality.SPIKE);
        // the good one was three seconds ago, but the wild one two
        assertThat(warming(14, 65.5 - 7.1)).isEqualTo(Quality.SPIKE);
        assertThat(warming(16, 65.5 + 7)).isEqualTo(Quality.GOOD);
    }

    /** Two wild values of a loose plug may agree by chance. */
    @Test
    void whereThereWereSpikesWithinAMinute_moreMustAgree() {
        assertThat(boilingEachSecond(100, 60, 100, 70, 65)).isEqualTo(Quality.SPIKE);
        assertThat(boiling(5, 60)).isEqualTo(Quality.GOOD);
        boiling(61.1, 60);
        boiling(62, 20);
        assertThat(boiling(63, 20)).as("a minute later").isEqualTo(Quality.GOOD);
    }

    @Test
    void ofThreeThatAgree_allAreBelieved_howeverManySpikesThereWere() {
        boilingEachSecond(100, 60, 100, 60, 100, 60, 100, 60, 100, 60);
        assertThat(boiling(10, 60)).isEqualTo(Quality.SPIKE);
        assertThat(boiling(11, 60)).isEqualTo(Quality.SPIKE);
        assertThat(boiling(12, 60)).isEqualTo(Quality.GOOD);
    }

    @Test
    void wildValuesToEitherSide_areSpikes() {
        assertThat(boilingEachSecond(100, 80, 115, 50, 45)).isEqualTo(Quality.SPIKE);
        assertThat(plausibility.implausible(4)).isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void aFallThatIsTooFastToAgree_isNotOfALoosePlug() {
        assertThat(boilingEachSecond(100, 87, 70, 56, 50)).isEqualTo(Quality.GOOD);
        assertThat(plausibility.implausible(4)).isEqualTo(Condition.ABSENT);
    }

    @ParameterizedTest(name = "{0} °C and {1} °C: {2}")
    @CsvSource({"80, 92, GOOD", "80, 92.1, SPIKE", "80, 68, GOOD", "80, 67.9, SPIKE"})
    void aFarReading_isBelievedWhenTheNextAgrees(double firstC, double secondC, Quality expected) {
        warming(0, 40);
        assertThat(warming(1, firstC)).isEqualTo(Quality.SPIKE);
        assertThat(warming(2, secondC)).isEqualTo(expected);
    }

    @Test
    void whatWasConfirmed_isWhereTheProbeIsNow() {
        warming(0, 40);
        warming(1, 80);
        assertThat(warming(2, 81)).isEqualTo(Quality.GOOD);
        assertThat(warming(3, 82)).isEqualTo(Quality.GOOD);
        assertThat(warming(4, 40)).isEqualTo(Quality.SPIKE);
    }

    @Test
    void aGoodReadingBetweenTwoFarOnes_confirmsNeither() {
        warming(0, 40);
        warming(1, 80);
        assertThat(warming(2, 40)).isEqualTo(Quality.GOOD);
        assertThat(warming(3, 80)).isEqualTo(Quality.SPIKE);
    }

    @Test
    void aFarReadingThatWasBelieved_confirmsNoOther() {
        warming(0, 40);
        warming(1, 80);
        warming(2, 80);
        assertThat(warming(3, 72)).isEqualTo(Quality.SPIKE);
        assertThat(warming(4, 80)).isEqualTo(Quality.GOOD);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"140, GOOD", "140.1, SPIKE", "-10, GOOD", "-10.1, SPIKE"})
    void noPreserve_hasSuchATemperature(double c, Quality first) {
        assertThat(warming(0, c)).isEqualTo(first);
        assertThat(warming(1, c)).isEqualTo(first == Quality.GOOD ? Quality.GOOD : Quality.IMPLAUSIBLE);
        assertThat(plausibility.implausible(1) == Condition.PRESENT).isEqualTo(first != Quality.GOOD);
        assertThat(plausibility.jumpedUpC()).isEmpty();
    }

    @Test
    void aJumpUpOutOfABoilingPan_isImplausibleOnceItIsConfirmed() {
        boiling(0, 101);
        assertThat(boiling(1, 109)).isEqualTo(Quality.SPIKE);
        assertThat(plausibility.jumpedUpC()).isEmpty();
        assertThat(boiling(2, 109)).isEqualTo(Quality.IMPLAUSIBLE);
        assertThat(plausibility.jumpedUpC()).hasValue(8);
        assertThat(plausibility.implausible(2)).isEqualTo(Condition.PRESENT);
    }

    @Test
    void aSmallerJump_orOneOutOfAPanThatDoesNotBoil_orOneDown_isBelieved() {
        boiling(0, 101);
        boiling(1, 108.9);
        assertThat(boiling(2, 108.9)).isEqualTo(Quality.GOOD);
        boiling(3, 60);
        assertThat(boiling(4, 60)).isEqualTo(Quality.GOOD);
        warming(5, 90);
        assertThat(warming(6, 90)).isEqualTo(Quality.GOOD);
        assertThat(plausibility.jumpedUpC()).isEmpty();
    }

    @ParameterizedTest(name = "after a jump by {0} °C it is back below {1} °C more")
    @CsvSource({"8, 3", "9, 3", "12, 4", "30, 10"})
    void aJumpIsOver_whenTheReadingIsBack(double jumpC, double withinC) {
        boiling(0, 101);
        boiling(1, 101 + jumpC);
        boiling(2, 101 + jumpC);
        assertThat(boiling(3, 101 + withinC)).isEqualTo(Quality.IMPLAUSIBLE);
        assertThat(boiling(4, 101 + withinC - 0.01)).isEqualTo(Quality.GOOD);
        assertThat(plausibility.jumpedUpC()).isEmpty();
        assertThat(boiling(5, 101 + withinC)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aJumpThatLastsForAMinute_isWhereTheProbeIsNow() {
        boiling(0, 101);
        boiling(1, 111);
        boiling(2, 111);
        assertThat(boiling(61, 111)).isEqualTo(Quality.IMPLAUSIBLE);
        assertThat(boiling(62, 111)).isEqualTo(Quality.GOOD);
        assertThat(boiling(63, 111)).isEqualTo(Quality.GOOD);
        assertThat(plausibility.implausible(63)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void afterAJump_aFarReadingMustBeConfirmedAnew() {
        boiling(0, 101);
        boiling(1, 111);
        boiling(2, 111);
        boiling(3, 101);
        assertThat(boiling(4, 111)).isEqualTo(Quality.SPIKE);
        assertThat(boiling(5, 101)).isEqualTo(Quality.GOOD);
    }

    @ParameterizedTest(name = "{0} spikes")
    @ValueSource(ints = {2, 3, 4, 5})
    void fiveSpikesAMinute_areALoosePlug(int spikes) {
        boiling(0, 101);
        for (int i = 0; i < spikes; i++) {
            boiling(1 + 2 * i, 60);
            boiling(2 + 2 * i, 101);
        }
        Condition expected = spikes < 3 ? Condition.ABSENT : spikes < 5 ? Condition.UNDECIDED : Condition.PRESENT;
        assertThat(plausibility.implausible(20)).isEqualTo(expected);
        assertThat(plausibility.implausible(61)).isEqualTo(expected);
        assertThat(plausibility.implausible(80)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void aSpikeOfMoreThanAMinuteAgo_countsNoMore() {
        boiling(0, 101);
        for (int i = 0; i < 5; i++) {
            boiling(1 + 2 * i, 60);
            boiling(2 + 2 * i, 101);
        }
        assertThat(plausibility.implausible(61)).isEqualTo(Condition.PRESENT);
        assertThat(plausibility.implausible(61.5)).isEqualTo(Condition.UNDECIDED);
    }
}
