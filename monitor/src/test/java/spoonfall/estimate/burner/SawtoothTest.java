package spoonfall.estimate.burner;

import static org.assertj.core.api.Assertions.assertThat;
import static spoonfall.estimate.burner.DippingPoints.CLIMB_PER_MIN_C;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The points are those of {@link DippingPoints}. */
class SawtoothTest {
    private static final long SEED = 1;

    @Test
    void dips_areSeen_whenTheBurnerSwitchesOffEveryMinute() {
        Sawtooth sawtooth = new Sawtooth();

        int skipped = follow(sawtooth, 600, DippingPoints::offForTwentySecondsAMinute);

        assertThat(sawtooth.depthC()).isBetween(0.4, 0.9);
        assertThat(skipped).isBetween(15, 50);
    }

    @Test
    void dips_areNotSeen_inNoise() {
        System.out.println("noise, seed " + SEED);
        for (int i = 0; i < 20; i++) {
            Random random = new Random(SEED + i);
            assertThat(follow(new Sawtooth(), 1800, t -> 0.15 * random.nextGaussian()))
                    .as("seed %d", SEED + i)
                    .isZero();
        }
    }

    @Test
    void dips_areNotSeen_whenThePanIsStirred() {
        int skipped = follow(new Sawtooth(), 1800, t -> t % 150 < 14 ? -0.8 : 0);

        assertThat(skipped).isZero();
    }

    @Test
    void aFall_thatLasts_isNoDip() {
        Sawtooth sawtooth = new Sawtooth();
        follow(sawtooth, 600, DippingPoints::offForTwentySecondsAMinute);

        for (double t = 605; t < 700; t += 5) {
            sawtooth.point(t, 1 - (t - 600) / 60, CLIMB_PER_MIN_C);
        }

        assertThat(sawtooth.dips()).isFalse();
    }

    private static int follow(Sawtooth sawtooth, double untilT, DoubleUnaryOperator added) {
        return DippingPoints.follow(sawtooth::point, sawtooth::dips, 5, untilT, added);
    }
}
