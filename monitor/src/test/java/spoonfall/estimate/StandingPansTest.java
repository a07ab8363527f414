package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Which steady pans are taken for such as stand, made from the physics (seeds 1 to 20). Beside each check stands what was measured. */
final class StandingPansTest {
    private static final long SEEDS = 20;
    private static final int TEST_S = 60;
    private static final double FALLS_C = 2.5;
    private static final double KW = 1.35;
    private static final double STEP_C = 0.1;

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
