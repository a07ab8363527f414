package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.KnownPan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;

/** Each limit of a climb that is too fast from both sides: what is known stands still, and the signals are made by hand. */
final class TooFastLimitsTest {
    private static final int FAULT_S = (int) KnownPan.UNTIL_S + 1;
    private static final double NOT_HELD_C = Double.POSITIVE_INFINITY;
    private static final double NOTICES_S = 8;

    /** What was known then counts: two minutes before, taken down every five seconds from 51 s on. */
    private static final int KNOWN_S = 781;

    private TooFast tooFast = new TooFast(100);
    private KnownPan pan = known(t -> 0);
    private double boilingForS = 800;

    private KnownPan known(DoubleUnaryOperator offC) {
        tooFast = new TooFast(100);
        return KnownPan.watched(
                offC,
                made -> tooFast.atMostC(made.now(), made.stages().boilingForS(made.t()), NOTICES_S, made.forecaster()));
    }

    private double mostC(int t, double c, double perMinC) {
        return mostC(t, c, perMinC, 101, 0.01);
    }

    private double mostC(int t, double c, double perMinC, double earlierPeakC, double stepC) {
        Signals moving = MadeSignals.moving(t, c, perMinC);
        Signals now = new Signals(t, c, c, moving.quick(), moving.steady(), c, earlierPeakC, stepC);
        return tooFast.atMostC(now, boilingForS, NOTICES_S, pan.forecaster());
    }

    /** Where it is due at {@code t} and some seconds ahead, half as much again in what climbs since. */
    private double dueC(int t) {
        double minutes = (t + NOTICES_S - FAULT_S) / 60;
        double grown = pan.growsPerMin(KNOWN_S) * minutes;
        return pan.dueC(KNOWN_S) + 1.5 * pan.climbPerMinC(KNOWN_S) * minutes * Math.expm1(grown) / grown;
    }

    @Test
    void whatClimbsTooFast_isHeldToWhereItIsDue_alongItsSteepeningCurve() {
        assertThat(pan.growsPerMin(KNOWN_S)).isGreaterThan(0.02);
        for (int t = FAULT_S; t <= FAULT_S + 300; t++) {
            assertThat(mostC(t, 106, 3)).isCloseTo(dueC(t), Offset.offset(1e-9));
        }
    }

    @ParameterizedTest(name = "{0} °C a minute: {1}")
    @CsvSource({"0.801, true", "0.799, false"})
    void tooFast_isMoreThanEightTenthsAMinute(double perMinC, boolean held) {
        assertThat(mostC(FAULT_S, 106, perMinC) < NOT_HELD_C).isEqualTo(held);
    }

    @ParameterizedTest(name = "{0} °C higher, steps of {1} °C: {2}")
    @CsvSource({"0.001, 0, true", "-0.001, 0, false", "0.299, 0.3, false", "0.301, 0.3, true"})
    void itMustLieFourTenthsAboveWhereItIsDue_besideItsStep(double byC, double stepC, boolean held) {
        assertThat(mostC(FAULT_S, dueC(FAULT_S) + 0.4 + byC, 3, 101, stepC) < NOT_HELD_C)
                .isEqualTo(held);
    }

    @Test
    void inNoisyReadings_itMustLieFurtherAbove() {
        pan = known(t -> 0.2 * Math.sin(2.3 * t) + 0.2 * Math.sin(0.37 * t));
        double aboveC = 4 * pan.noiseC(KNOWN_S);
        assertThat(aboveC).isGreaterThan(0.45);
        assertThat(mostC(FAULT_S, dueC(FAULT_S) + aboveC - 0.02, 3)).isEqualTo(NOT_HELD_C);
        assertThat(mostC(FAULT_S + 1, dueC(FAULT_S + 1) + aboveC + 0.03, 3)).isLessThan(NOT_HELD_C);
    }

    @ParameterizedTest(name = "{0} °C higher: {1}")
    @CsvSource({"0.001, true", "-0.001, false"})
    void itMustLieThreeTenthsAboveWhereItWas(double byC, boolean held) {
        assertThat(mostC(FAULT_S, 106, 3, 105.7 - byC, 0) < NOT_HELD_C).isEqualTo(held);
    }

    @Test
    void itIsHeldForTwoMinutes_afterItsLastFastSecond() {
        mostC(FAULT_S, 106, 3);
        mostC(FAULT_S + 10, 106, 3);
        for (int i = 11; i < 130; i++) {
            assertThat(mostC(FAULT_S + i, 103, 0.1)).isCloseTo(dueC(FAULT_S + i), Offset.offset(1e-9));
        }
        assertThat(mostC(FAULT_S + 130, 103, 0.1)).isEqualTo(NOT_HELD_C);
    }

    @Test
    void afterSixMinutes_itIsThePanAndWhatWasKnownOfItIsForgotten() {
        for (int i = 0; i <= 360; i++) {
            assertThat(mostC(FAULT_S + i, 109, 3)).isLessThan(NOT_HELD_C);
        }
        for (int i = 361; i <= 390; i++) {
            assertThat(mostC(FAULT_S + i, 109, 3)).isEqualTo(NOT_HELD_C);
        }
    }

    @Test
    void readingsThatBeginAnew_areHeldToWhatIsKnownHalfAMinuteLater() {
        tooFast.restart(FAULT_S);
        for (int i = 1; i < 30; i++) {
            assertThat(mostC(FAULT_S + i, 106, 0.1)).isEqualTo(NOT_HELD_C);
        }
        assertThat(mostC(FAULT_S + 29, 106, 3)).as("nothing is known anew").isEqualTo(NOT_HELD_C);
        mostC(FAULT_S + 30, 106, 0.1);
        // where it is due two minutes later, less than that away: the pan as it is known now, which stands still here
        assertThat(mostC(FAULT_S + 31, 106, 3)).isCloseTo(pan.dueC(FAULT_S - 1), Offset.offset(0.05));
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"60, false", "61, true"})
    void inItsFirstMinuteOfBoiling_nothingIsTooFast(double seconds, boolean held) {
        boilingForS = seconds;
        assertThat(mostC(FAULT_S, 106, 3) < NOT_HELD_C).isEqualTo(held);
    }

    @Test
    void aPanThatLeavesTheBoil_isHeldNoMore() {
        mostC(FAULT_S, 106, 3);
        boilingForS = 0;
        assertThat(mostC(FAULT_S + 1, 106, 3)).isEqualTo(NOT_HELD_C);
        boilingForS = 61;
        assertThat(mostC(FAULT_S + 2, 106, 3)).isEqualTo(NOT_HELD_C);
    }
}
