package spoonfall.estimate.burner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spoonfall.estimate.burner.DippingPoints.CLIMB_PER_MIN_C;
import static spoonfall.estimate.burner.DippingPoints.offForTwentySecondsAMinute;
import static spoonfall.estimate.burner.DippingPoints.riseC;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The points are those of {@link DippingPoints}. */
class CyclingTest {
    private static final long SEED = 1;

    @Test
    void dips_areSeen_whenTheBurnerSwitchesOffEveryMinute() {
        Cycling cycling = new Cycling();

        int skipped = follow(cycling, 5, 600, DippingPoints::offForTwentySecondsAMinute);

        assertThat(cycling.depthC()).isBetween(0.4, 0.9);
        assertThat(cycling.topC()).isCloseTo(riseC(600, 0), within(0.1));
        assertThat(skipped).isBetween(30, 80);
    }

    @Test
    void dips_areSeen_whenThePointsAreTenSecondsApart() {
        Cycling cycling = new Cycling();

        int skipped = follow(cycling, 10, 900, DippingPoints::offForTwentySecondsAMinute);

        assertThat(cycling.depthC()).isBetween(0.4, 0.9);
        assertThat(skipped).isBetween(20, 50);
    }

    @Test
    void whatIsNotSkipped_liesAtTheHeights_whateverTheNoise() {
        System.out.println("noise, seed " + SEED);
        Cycling cycling = new Cycling();
        Random random = new Random(SEED);
        double sumC = 0;
        int kept = 0;
        for (double t = 0; t <= 1800; t += 5) {
            double addedC = offForTwentySecondsAMinute(t);
            cycling.point(t, riseC(t, addedC + 0.1 * random.nextGaussian()), CLIMB_PER_MIN_C);
            if (t > 600 && !cycling.dips()) {
                sumC += addedC;
                kept++;
            }
        }

        assertThat(kept).isGreaterThan(60);
        assertThat(sumC / kept).isGreaterThan(-0.12);
    }

    @Test
    void waterRests_whileThePanIsOffTheBoil_andIsMadeUpForOnceItIsBack() {
        Cycling cycling = new Cycling();
        follow(cycling, 5, 600, DippingPoints::offForTwentySecondsAMinute);

        for (double t = 605; t <= 660; t += 5) {
            cycling.point(t, riseC(t, offForTwentySecondsAMinute(t)), CLIMB_PER_MIN_C);
            double restsS = cycling.restsS(t);
            if (!cycling.dips()) {
                assertThat(restsS).as("at %s", t).isZero();
            } else if (t == 650) {
                assertThat(restsS).as("soon after it was off").isBetween(5.0, 15.0);
            }
        }
    }

    @Test
    void dips_areNotSeen_inNoise() {
        System.out.println("noise, seed " + SEED);
        for (int i = 0; i < 20; i++) {
            Random random = new Random(SEED + i);
            assertThat(follow(new Cycling(), 5, 1800, t -> 0.15 * random.nextGaussian()))
                    .as("seed %d", SEED + i)
                    .isZero();
        }
    }

    @Test
    void dips_areNotSeen_whenThePanIsStirred() {
        int skipped = follow(new Cycling(), 5, 1800, t -> t % 150 < 14 ? -0.8 : 0);

        assertThat(skipped).isZero();
    }

    @Test
    void itsDepth_countsOnceItHasLasted_andGrowsNoDeeperInAFall() {
        Cycling cycling = new Cycling();
        double seenT = 0;
        for (double t = 0; t <= 600; t += 5) {
            cycling.point(t, riseC(t, offForTwentySecondsAMinute(t)), CLIMB_PER_MIN_C);
            seenT = cycling.depthC() == 0 ? t : seenT;
            boolean lasted = t - seenT > 90;
            assertThat(cycling.lastingDepthC() > 0).as("at %s", t).isEqualTo(lasted);
        }
        double depthC = cycling.lastingDepthC();
        assertThat(depthC).isBetween(0.4, 0.9);

        for (double t = 605; t <= 660; t += 5) {
            cycling.point(t, 2 - (t - 600) / 20, CLIMB_PER_MIN_C);
        }

        assertThat(cycling.depthC()).isGreaterThan(1.2);
        assertThat(cycling.lastingDepthC()).isLessThan(1.1 * depthC);
    }

    @Test
    void aFall_thatLasts_isNoDip() {
        Cycling cycling = new Cycling();
        follow(cycling, 5, 600, DippingPoints::offForTwentySecondsAMinute);

        for (double t = 605; t < 700; t += 5) {
            cycling.point(t, 1 - (t - 600) / 60, CLIMB_PER_MIN_C);
        }

        assertThat(cycling.dips()).isFalse();
    }

    private static int follow(Cycling cycling, double everyS, double untilT, DoubleUnaryOperator added) {
        return DippingPoints.follow(cycling::point, cycling::dips, everyS, untilT, added);
    }
}
