package spoonfall.estimate.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import spoonfall.estimate.PanEstimator;
import spoonfall.estimate.SteadyPan;

/** Which steady pans are taken for such as stand (seeds 1 to 20). Beside each check stands what was measured. */
final class StandingPansTest {
    private static final long SEEDS = 20;
    private static final int TEST_S = 60;
    private static final double FALLS_C = 2.5;
    private static final double KW = 1.35;
    private static final double STEP_C = 0.1;
    private static final double NOISE_C = 0.06;
    private static final double SLOW_PER_MIN_C = 0.08;
    private static final int STANDS_FROM_S = 900;
    private static final int STANDS_UNTIL_S = 1380;

    /** What was known of its pace before the test is known still. Measured: 20; none in 440 s when it was to be known anew. */
    @Test
    void aPanWhoseHeatIsOffRightAfterATest_isStill_withinThreeMinutes() {
        assertThat(stillWithinThreeMinutesOfATest(0)).isGreaterThan(17);
    }

    /** Measured: none. */
    @Test
    void aPanThatGoesOnAfterATest_isNotStill() {
        assertThat(stillWithinThreeMinutesOfATest(KW)).isZero();
    }

    /** It takes minutes to rise by what noise does not; that it climbs is seen sooner. Measured: none; 19 when it had to rise. */
    @Test
    void aSlowPanThatStood_isSeenToClimbAgain_withinTwoMinutesAndAHalf() {
        assertThat(slowPansThatStandStill(SLOW_PER_MIN_C, 150)).isLessThan(4);
    }

    /** What noise alone makes of a standing pan is no climb. Measured: 18, before and after. */
    @Test
    void aSlowPanThatStandsOn_isStill_tenMinutesLater() {
        assertThat(slowPansThatStandStill(0, 600)).isGreaterThan(15);
    }

    /** How many that climbed slowly and were seen to stand are taken to stand still, so long after they climb by {@code thenPerMinC}. */
    private static long slowPansThatStandStill(double thenPerMinC, int laterS) {
        return LongStream.rangeClosed(1, SEEDS)
                .filter(seed -> {
                    SplittableRandom random = new SplittableRandom(seed);
                    PanEstimator estimator = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, false);
                    double riseC = 2;
                    for (int t = 1; t <= STANDS_UNTIL_S + laterS; t++) {
                        double standsPerMinC = t <= STANDS_UNTIL_S ? 0 : thenPerMinC;
                        riseC += (t <= STANDS_FROM_S ? SLOW_PER_MIN_C : standsPerMinC) / 60;
                        double shownC = riseC + NOISE_C * random.nextGaussian();
                        estimator.accept(t - 0.5, Math.rint(shownC / STEP_C) * STEP_C);
                        estimator.endSecond(t, true, t >= 15, false, STEP_C);
                        assertThat(estimator.still() || t != STANDS_UNTIL_S).isTrue();
                    }
                    return estimator.still();
                })
                .count();
    }

    private static long stillWithinThreeMinutesOfATest(double thenKw) {
        return LongStream.rangeClosed(1, SEEDS)
                .filter(seed -> {
                    Cook cook = new Cook(SteadyPan.usual(seed));
                    cook.untilS(900, s -> 0);
                    cook.pan.heat(0);
                    cook.untilS(900 + TEST_S, s -> FALLS_C * Math.sin(Math.PI * (s - 900) / TEST_S));
                    cook.pan.heat(thenKw);
                    cook.untilS(900 + TEST_S + 180, s -> 0);
                    return cook.stood;
                })
                .count();
    }

    /** One pan, and who follows it. */
    private static final class Cook {
        private final SteadyPan pan;
        private final PanEstimator estimator = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, false);
        private double t;
        private boolean stood;

        Cook(SteadyPan pan) {
            this.pan = pan;
        }

        void untilS(double untilT, DoubleUnaryOperator lowC) {
            while (t < untilT) {
                t++;
                pan.second();
                estimator.accept(t - 0.5, Math.rint(pan.shownC(lowC.applyAsDouble(t)) / STEP_C) * STEP_C);
                estimator.endSecond(t, true, t >= 15, false, STEP_C);
                stood |= estimator.still();
            }
        }
    }
}
