package spoonfall.estimate.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.series.Colour;
import spoonfall.series.Jitter;

/** What is noise and what is not: the two meters against sequences whose answer any textbook of time series gives. */
class NoiseTest {
    private static final long SEED = 5;

    @ParameterizedTest(name = "falls by {0} °C a point")
    @ValueSource(doubles = {0, 0.02, 0.05})
    void jitter_isTheThermometersAlone_whateverThePanDoes(double fallsC) {
        SplittableRandom random = new SplittableRandom(SEED);
        Jitter jitter = new Jitter();
        for (int i = 0; i < 2000; i++) {
            jitter.observe(0.1 * random.nextGaussian() - fallsC * i);
        }
        assertThat(jitter.sigmaC()).as("seed %d", SEED).isCloseTo(0.1, within(0.03));
    }

    @Test
    void noise_doesNotGrow_whenThePanCoolsAwayFromWhatWasExpected() {
        SplittableRandom random = new SplittableRandom(SEED);
        NoiseMeter noise = new NoiseMeter();
        for (int i = 0; i < 400; i++) {
            double offC = 0.05 * random.nextGaussian() - (i < 200 ? 0 : 0.04 * (i - 200));
            noise.pass(offC);
            noise.observe(offC, 0.0004, 0.01);
        }
        assertThat(Math.sqrt(noise.variance(0.01))).as("seed %d", SEED).isLessThan(0.6);
    }

    @Test
    void colour_is1_ofIndependentPoints() {
        assertThat(colour(0)).as("seed %d", SEED).isBetween(1.0, 1.6);
    }

    @Test
    void colour_is3_ofPointsThatAreAlikeByAHalf() {
        // (1 + ρ) / (1 − ρ)
        assertThat(colour(0.5)).as("seed %d", SEED).isBetween(2.0, 4.5);
    }

    private static double colour(double alike) {
        SplittableRandom random = new SplittableRandom(SEED);
        Colour colour = new Colour();
        double off = 0;
        for (int i = 0; i < 3000; i++) {
            off = alike * off + random.nextGaussian();
            colour.observe(off);
        }
        return colour.times();
    }
}
