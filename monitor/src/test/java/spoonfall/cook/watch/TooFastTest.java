package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.MadePan;

/**
 * Readings that climb faster than water could leave, on a pan drawn by hand that climbs 0.1 °C a minute up to 900 s. The limits are
 * those of {@link TooFast}, judgements without a source.
 */
final class TooFastTest {
    private static final double FAULT_S = 900;
    private static final double NOT_HELD_C = Double.POSITIVE_INFINITY;

    private final TooFast tooFast = new TooFast(100);
    private double mostC = NOT_HELD_C;

    private static double since(double t) {
        return Math.max(0, t - FAULT_S);
    }

    private MadePan watch(MadePan pan, double untilT) {
        return pan.watch(
                untilT, now -> mostC = tooFast.atMostC(now, pan.stages().boilingForS(now.t()), 8, pan.forecaster()));
    }

    /** When it was first held back; NaN if it was not. */
    private double heldT(MadePan pan, double untilT) {
        while (pan.t() < untilT) {
            watch(pan, pan.t() + 1);
            if (mostC < NOT_HELD_C) {
                return pan.t();
            }
        }
        return Double.NaN;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 3, 6})
    void readingsThatClimbTooFast_areHeldToWhereThePanWasDue(double perMinC) {
        MadePan pan = MadePan.climbing(1.5, FAULT_S, perMinC);
        assertThat(heldT(pan, 1000)).isBetween(FAULT_S + 5, FAULT_S + 45);
        watch(pan, 1000);
        // 101.5 °C and a tenth a minute: 103.1 °C is due, a little more may be, and half as much again in what climbs
        assertThat(mostC).isBetween(103.05, 103.4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 0.7})
    void aPanThatClimbsAsWaterLeaves_isNotHeld(double perMinC) {
        assertThat(heldT(MadePan.climbing(1.5, FAULT_S, perMinC), 1150)).isNaN();
    }

    @Test
    void whatIsDue_goesOnClimbingByHalfAsMuchAgain() {
        MadePan pan = MadePan.climbing(1.5, FAULT_S, 3);
        watch(pan, 960);
        double firstC = mostC;
        watch(pan, 1020);
        double climb = pan.forecaster().expectedPerMinC(2).orElseThrow();
        assertThat(mostC - firstC).isCloseTo(1.5 * 0.08, Offset.offset(0.05));
        assertThat(climb).isLessThan(0.2);
    }

    @Test
    void aDipThatComesBack_isNotHeld() {
        DoubleUnaryOperator dip = t -> t > FAULT_S && t < FAULT_S + 40 ? -1.5 + 1.5 * since(t) / 40 : 0;
        assertThat(heldT(MadePan.climbing(1.5, dip), 1000)).isNaN();
    }

    @Test
    void whatClimbedByLittle_isNoise() {
        assertThat(heldT(MadePan.climbing(1.5, t -> Math.min(0.35, 3 * since(t) / 60)), 1000))
                .isNaN();
        TooFastTest more = new TooFastTest();
        assertThat(more.heldT(MadePan.climbing(1.5, t -> Math.min(0.8, 3 * since(t) / 60)), 1000))
                .isFinite();
    }

    @Test
    void whenItClimbsNoMore_itIsHeldForTwoMinutes() {
        MadePan pan = MadePan.climbing(1.5, t -> 3 * Math.min(20, since(t)) / 60);
        double lastFastT = Double.NaN;
        assertThat(heldT(pan, 1000)).isFinite();
        while (mostC < NOT_HELD_C) {
            lastFastT = pan.forecaster().climbsTooFast(pan.now()) ? pan.t() : lastFastT;
            watch(pan, pan.t() + 1);
            assertThat(pan.t()).isLessThan(1300);
        }
        assertThat(pan.t() - lastFastT).isBetween(115.0, 126.0);
    }

    @Test
    void whatStaysUp_isNotThereYet_forSixMinutes() {
        MadePan pan = MadePan.climbing(1.5, t -> Math.min(2, 6 * since(t) / 60));
        double beganT = heldT(pan, 1000);
        watch(pan, beganT + 300);
        assertThat(tooFast.staysHigh(pan.t(), 104)).isTrue();
        assertThat(tooFast.staysHigh(pan.t(), 103)).as("where it is due by now").isFalse();
        watch(pan, beganT + 362);
        assertThat(tooFast.staysHigh(pan.t(), 104)).isFalse();
    }

    @Test
    void whatComesDownAgain_isHeldNoLongerForThat() {
        MadePan pan = MadePan.climbing(
                1.5, t -> since(t) < 60 ? 3 * since(t) / 60 : 3 * Math.exp(-Math.max(0, since(t) - 60) / 30));
        assertThat(heldT(pan, 1000)).isFinite();
        watch(pan, 1030);
        assertThat(tooFast.staysHigh(pan.t(), 104)).isFalse();
        watch(pan, 1090);
        assertThat(mostC).isEqualTo(NOT_HELD_C);
    }

    @Test
    void whatClimbsForSixMinutes_isThePanAfterAll() {
        MadePan pan = MadePan.climbing(1.5, FAULT_S, 1.2);
        double beganT = heldT(pan, 1000);
        watch(pan, beganT + 360);
        assertThat(mostC).isLessThan(NOT_HELD_C);
        watch(pan, beganT + 361);
        assertThat(mostC).isEqualTo(NOT_HELD_C);
    }

    @Test
    void inItsFirstMinute_aBoilIsNotHeld_norIsAPanThatDoesNotBoil() {
        MadePan pan = MadePan.climbing(1.5, FAULT_S, 3);
        watch(pan, 930);
        assertThat(mostC).isLessThan(NOT_HELD_C);
        assertThat(tooFast.atMostC(pan.now(), 0, 8, pan.forecaster())).isEqualTo(NOT_HELD_C);
        TooFastTest young = new TooFastTest();
        MadePan other = MadePan.climbing(1.5, FAULT_S, 3);
        other.watch(940, now -> young.mostC = young.tooFast.atMostC(now, Math.min(60, now.t()), 8, other.forecaster()));
        assertThat(young.mostC).isEqualTo(NOT_HELD_C);
    }

    @Test
    void readingsThatBeginAnew_areHeldToNothing() {
        MadePan pan = MadePan.climbing(1.5, FAULT_S, 3);
        watch(pan, 940);
        assertThat(mostC).isLessThan(NOT_HELD_C);
        tooFast.restart(pan.t());
        watch(pan, 941);
        assertThat(mostC).isEqualTo(NOT_HELD_C);
    }
}
