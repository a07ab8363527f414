package spoonfall.estimate.warming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Thermometers of a known time constant that come to the boil with the pan: their readings follow the pan by the equation
 * of a first-order lag, step by step, not by the closed form that the estimate uses.
 */
final class LatenessTest {
    private static final long SEED = 7;

    @ParameterizedTest
    @CsvSource({"2, 8, 0.02", "5, 8, 0.05", "10, 8, 0.05", "14, 8, 0.05", "10, 15, 0.1", "3, 15, 0.1"})
    void lateness_isLearnt_fromTheCornerBetweenWarmingAndBoiling(double lagS, double perMinC, double noiseC) {
        Lateness lateness = new Lateness();
        boil(lateness, lagS, perMinC, noiseC);
        System.out.printf("late by %.1f s, said %.1f s (seed %d)%n", lagS, lateness.s(), SEED);
        assertThat(lateness.s()).isCloseTo(lagS, within(1.6));
    }

    @Test
    void lateness_isTheUsual_whenThePanWasNotSeenToWarm() {
        Lateness lateness = new Lateness();
        for (double t = 0; t < 300; t++) {
            lateness.accept(t, 1 + t / 600);
            lateness.endSecond(t + 0.5, true);
        }
        assertThat(lateness.s()).isEqualTo(6.5);
    }

    @Test
    void lateness_isTheUsual_whenThePanWarmsTooSlowlyToTell() {
        Lateness lateness = new Lateness();
        boil(lateness, 12, 2, 0.05);
        assertThat(lateness.s()).isEqualTo(6.5);
    }

    private static void boil(Lateness lateness, double lagS, double perMinC, double noiseC) {
        Random random = new Random(SEED);
        double shownC = -20;
        for (int tenths = 0; tenths < 10 * 900; tenths++) {
            double panC = Math.min(1, -20 + perMinC * tenths / 600);
            shownC += (panC - shownC) * (1 - Math.exp(-0.1 / lagS));
            if (tenths % 10 == 0) {
                lateness.accept(tenths / 10.0, shownC + noiseC * random.nextGaussian());
                lateness.endSecond(tenths / 10.0, shownC > 0.3);
            }
        }
    }
}
