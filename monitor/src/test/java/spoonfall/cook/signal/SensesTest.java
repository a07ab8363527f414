package spoonfall.cook.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;

/** What is made of readings, second by second: levels, lines, heights and steps. */
final class SensesTest {
    private static final Offset<Double> EXACTLY = Offset.offset(1e-9);

    private final Senses senses = new Senses(Pace.BY_ITSELF);
    private double t;

    private Signals watch(int seconds, DoubleUnaryOperator c) {
        return watch(senses, seconds, c);
    }

    private Signals watch(Senses of, int seconds, DoubleUnaryOperator c) {
        Signals now = MadeSignals.at(0, 0);
        for (int i = 0; i < seconds; i++) {
            of.accept(c.applyAsDouble(t));
            t++;
            now = of.endSecond(t).orElseThrow();
        }
        return now;
    }

    @ParameterizedTest
    @EnumSource(Pace.class)
    void beforeTheFirstReading_thereIsNothing(Pace pace) {
        assertThat(new Senses(pace).endSecond(0)).isEmpty();
    }

    @Test
    void theLevel_isOfTheLastEightSeconds() {
        watch(60, t -> 100);
        // the middle half of eight: four of them, of which two are new
        assertThat(watch(4, t -> 102).levelC()).isCloseTo(101, EXACTLY);
        assertThat(watch(2, t -> 102).levelC()).isCloseTo(102, EXACTLY);
    }

    @Test
    void whoseReadingsAreFarApart_isMadeOfTheLastFour() {
        for (double c : new double[] {100, 101, 103, 110}) {
            senses.accept(c);
            t += 10;
            senses.endSecond(t);
        }
        assertThat(senses.endSecond(t).orElseThrow().levelC()).isCloseTo(102, EXACTLY);
    }

    @Test
    void theReadingsOfOneSecond_areTheirMedian() {
        for (double c : new double[] {100, 140, 101}) {
            senses.accept(c);
        }
        assertThat(senses.endSecond(1).orElseThrow().levelC()).isEqualTo(101);
    }

    @Test
    void aSecond_mayHoldAnyNumberOfReadings() {
        for (int i = 0; i < 101; i++) {
            senses.accept(100 + 0.01 * i);
        }
        assertThat(senses.endSecond(1).orElseThrow().levelC()).isCloseTo(100.5, EXACTLY);
    }

    @Test
    void whoTypesAgainWithinTheSecond_meansTheLatter() {
        Senses byHand = new Senses(Pace.BY_HAND);
        byHand.accept(100);
        byHand.accept(104);
        assertThat(byHand.endSecond(1).orElseThrow().levelC()).isEqualTo(104);
    }

    @Test
    void theTrend_runsAheadOfTheLevel() {
        Signals now = watch(200, t -> 100 + 0.01 * t);
        // the level is that of four seconds before, and its line ends at the last point
        assertThat(now.levelC()).isCloseTo(100 + 0.01 * (200 - 4.5), Offset.offset(0.006));
        Signals later = watch(4, t -> 100 + 0.01 * t);
        assertThat(later.trendC() - later.levelC()).isCloseTo(0, Offset.offset(0.006));
        assertThat(Signals.perMinute(later.quick().orElseThrow())).isCloseTo(0.6, Offset.offset(1e-6));
        assertThat(Signals.perMinute(later.steady().orElseThrow())).isCloseTo(0.6, Offset.offset(1e-6));
    }

    @Test
    void bubblesDoNotMoveTheTrend_andAJumpIsFollowedAtOnce() {
        watch(200, t -> 100);
        Signals bubble = watch(6, t -> 100.5);
        assertThat(bubble.levelC()).isCloseTo(100.5, EXACTLY);
        assertThat(bubble.trendC()).isCloseTo(100, Offset.offset(0.01));
        Signals jump = watch(8, t -> 101.5);
        assertThat(jump.trendC()).isEqualTo(jump.levelC()).isCloseTo(101.5, EXACTLY);
    }

    @Test
    void theLines_areOfTheLast45SecondsAndOfTwoMinutes() {
        watch(200, t -> 100);
        Signals now = watch(50, t -> 100 + 0.02 * (t - 200));
        assertThat(Signals.perMinute(now.quick().orElseThrow())).isCloseTo(1.2, Offset.offset(0.1));
        assertThat(Signals.perMinute(now.steady().orElseThrow())).isLessThan(0.5);
    }

    @Test
    void aThermometerThatSaysNothing_getsNoPointsOfItsOwn() {
        watch(100, t -> 100 + 0.01 * t);
        double atC = senses.endSecond(100).orElseThrow().trendC();
        Signals silent = MadeSignals.at(0, 0);
        for (int i = 101; i < 140; i++) {
            silent = senses.endSecond(i).orElseThrow();
        }
        // one that speaks by itself goes on as it did
        assertThat(silent.trendC()).isCloseTo(atC + 0.39, Offset.offset(0.02));
        assertThat(Signals.perMinute(silent.quick().orElseThrow())).isCloseTo(0.6, Offset.offset(1e-6));
    }

    @Test
    void aReadingByHand_saysWhereThePanIsForTwoAndAHalfMinutes() {
        Senses byHand = new Senses(Pace.BY_HAND);
        for (int i = 0; i < 10; i++) {
            byHand.accept(100 + 0.2 * i);
            byHand.endSecond(60 * i + 1);
        }
        double readT = 541;
        double atReadC = byHand.endSecond(readT).orElseThrow().trendC();
        double after150C = byHand.endSecond(readT + 150).orElseThrow().trendC();
        assertThat(after150C - atReadC).isCloseTo(0.5, Offset.offset(1e-6));
        assertThat(byHand.endSecond(readT + 200).orElseThrow().trendC()).isCloseTo(after150C, EXACTLY);
        assertThat(byHand.endSecond(readT + 400).orElseThrow().trendC()).isCloseTo(after150C, EXACTLY);
    }

    @Test
    void theHeight_isOfTenMinutes_andTheEarlierOneOfThoseBeforeTheLast45Seconds() {
        watch(100, t -> 103);
        Signals fallen = watch(40, t -> 101);
        assertThat(fallen.peakC()).isCloseTo(103, EXACTLY);
        assertThat(fallen.earlierPeakC()).isCloseTo(103, EXACTLY);
        Signals climbed = watch(500, t -> 102);
        assertThat(climbed.peakC()).isCloseTo(103, EXACTLY);
        Signals forgotten = watch(110, t -> 102);
        assertThat(forgotten.peakC()).isCloseTo(102, EXACTLY);
        Signals higher = watch(40, t -> 104);
        assertThat(higher.peakC()).isCloseTo(104, EXACTLY);
        assertThat(higher.earlierPeakC()).isCloseTo(102, EXACTLY);
        watch(10, t -> 105);
        Signals lower = watch(15, t -> 103);
        assertThat(lower.peakC()).isCloseTo(105, EXACTLY);
        assertThat(lower.earlierPeakC()).isCloseTo(104, EXACTLY);
    }

    @Test
    void whileNothingIsRead_heightsBecomeEarlierOnes_andAreForgotten() {
        watch(10, t -> 104);
        watch(20, t -> 102);
        assertThat(silentUntil(75).earlierPeakC()).isCloseTo(104, EXACTLY);
        assertThat(silentUntil(608).earlierPeakC()).isCloseTo(104, EXACTLY);
        assertThat(silentUntil(640).earlierPeakC()).isCloseTo(102, EXACTLY);
    }

    private Signals silentUntil(double untilT) {
        Signals now = MadeSignals.at(0, 0);
        while (t < untilT) {
            t++;
            now = senses.endSecond(t).orElseThrow();
        }
        return now;
    }

    @Test
    void aHeightThatWasNotThePans_isForgotten() {
        watch(100, t -> 103);
        assertThat(watch(10, t -> 101).peakC()).isCloseTo(103, EXACTLY);
        senses.forgetPeak(t);
        assertThat(watch(1, t -> 101).peakC()).isCloseTo(101, EXACTLY);
        watch(20, t -> 102);
        assertThat(watch(40, t -> 101).peakC()).isCloseTo(102, EXACTLY);
        assertThat(watch(600, t -> 101).peakC()).isCloseTo(101, EXACTLY);
    }

    @Test
    void theStep_isTheSmallestThatWasShown() {
        assertThat(watch(10, t -> 100).stepC()).isEqualTo(1);
        assertThat(watch(10, t -> 100).knownStepC()).isZero();
        assertThat(watch(1, t -> 100.5).stepC()).isCloseTo(0.5, EXACTLY);
        assertThat(watch(1, t -> 100.4).stepC()).isCloseTo(0.1, EXACTLY);
        assertThat(watch(1, t -> 103).knownStepC()).isCloseTo(0.1, EXACTLY);
        // what a conversion leaves behind is no step
        assertThat(watch(1, t -> 103.003).stepC()).isCloseTo(0.1, EXACTLY);
        assertThat(watch(1, t -> 103.009).stepC()).isCloseTo(0.006, EXACTLY);
    }

    @Test
    void readingsThatBeginAnew_haveNoWayHere() {
        watch(100, t -> 103);
        senses.restart();
        Signals now = watch(3, t -> 101);
        assertThat(now.levelC()).isEqualTo(101);
        assertThat(now.peakC()).isEqualTo(101);
        assertThat(now.quick()).isEmpty();
        assertThat(now.steady()).isEmpty();
        assertThat(now.trendC()).isEqualTo(101);
    }

    @Test
    void aPanThatMovesOtherwiseFromNowOn_keepsItsLevelAndLosesItsLines() {
        watch(100, t -> 100 + 0.05 * t);
        senses.newRegime();
        Signals now = watch(1, t -> 105);
        assertThat(now.levelC()).isBetween(104.5, 105.0);
        assertThat(now.quick()).isEmpty();
        assertThat(now.steady()).isEmpty();
        assertThat(now.peakC()).isEqualTo(now.levelC());
    }
}
