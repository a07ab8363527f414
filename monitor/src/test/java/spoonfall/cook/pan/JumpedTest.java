package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;

/** Readings that shift at once, second by second. The limits are those of {@link Jumped}, judgements without a source. */
final class JumpedTest {
    private static final double BOILS_C = 103;
    private static final double FAULT_S = 100;

    private final Jumped jumped = new Jumped();
    private double stepC = 0.1;
    private double t;

    /** When it was seen to jump, of a pan that climbs by 0.3 °C a minute and whose reading is off by so much. */
    private List<Double> seenT(double untilT, DoubleUnaryOperator offC) {
        List<Double> seenT = new ArrayList<>();
        for (; t < untilT; t++) {
            double c = BOILS_C + 0.3 * t / 60 + offC.applyAsDouble(t);
            Signals at = MadeSignals.at(t, c);
            if (jumped.endSecond(new Signals(t, c, c, at.quick(), at.steady(), at.peakC(), at.earlierPeakC(), stepC))) {
                seenT.add(t);
            }
        }
        return seenT;
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {-4, -0.8, 0.8, 4})
    void aReadingThatShiftsAtOnce_isSeenOnce_halfAMinuteLater(double byC) {
        assertThat(seenT(300, t -> t < FAULT_S ? 0 : byC))
                .singleElement()
                .satisfies(seenT -> assertThat(seenT).isBetween(FAULT_S + 20, FAULT_S + 35));
    }

    @Test
    void whatShiftsBack_isSeenAgain() {
        assertThat(seenT(400, t -> t < FAULT_S || t >= FAULT_S + 100 ? 0 : -2)).hasSize(2);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"0.3, 0", "0.5, 1"})
    void sixTenthsAreAJump_theClimbOfAMinuteBeingPartOfThem(double byC, int times) {
        assertThat(seenT(300, t -> t < FAULT_S ? 0 : byC)).hasSize(times);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"0.5, 0", "1, 1"})
    void aCoarseThermometer_takesAStepAtATime(double byC, int times) {
        stepC = 0.5;
        assertThat(seenT(300, t -> t < FAULT_S ? 0 : byC)).hasSize(times);
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {-6, -2, -0.5, 2})
    void whatFallsOrClimbsSteadily_hasNotJumped(double perMinC) {
        assertThat(seenT(400, t -> perMinC * Math.max(0, t - FAULT_S) / 60)).isEmpty();
    }

    @Test
    void aThermometerThatFollowsWithinSeconds_jumps_andAPanThatTakesAMinuteDoesNot() {
        assertThat(seenT(300, t -> -3 * (1 - Math.exp(-Math.max(0, t - FAULT_S) / 2))))
                .hasSize(1);
        JumpedTest pan = new JumpedTest();
        assertThat(pan.seenT(300, t -> -3 * (1 - Math.exp(-Math.max(0, t - FAULT_S) / 30))))
                .isEmpty();
    }

    @Test
    void aStir_isADipAndNoJump() {
        assertThat(seenT(300, t -> t >= FAULT_S && t < FAULT_S + 14 ? -1.1 : 0)).isEmpty();
    }

    @Test
    void aNoisyThermometer_doesNotJumpByItself() {
        SplittableRandom random = new SplittableRandom(5);
        assertThat(seenT(5000, t -> 0.25 * random.nextGaussian())).isEmpty();
    }

    @Test
    void whatIsElsewhereAfterAPause_hasNotJumped() {
        seenT(FAULT_S, t -> 0);
        t += 2;
        assertThat(seenT(300, t -> -2)).isEmpty();
    }

    @Test
    void whatBeginsAnew_hasNotJumped() {
        seenT(FAULT_S, t -> 0);
        jumped.restart();
        assertThat(seenT(300, t -> -2)).isEmpty();
    }
}
