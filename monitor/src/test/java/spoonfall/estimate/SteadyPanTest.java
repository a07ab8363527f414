package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The estimator on pans made from the physics (seeds 1 to 20). What is asserted is what was measured with some air; the
 * figures stand beside each check.
 */
final class SteadyPanTest {
    private static final long SEEDS = 20;

    /** Half way up: the usual pan takes 1,223 s. */
    private static final double HALFWAY_S = 600;

    @Test
    void arrival_isEmpty_beforeAnythingIsKnown() {
        Follower follower = new Follower(SteadyPan.usual(1), 1);
        assertThat(follower.arrival()).isEmpty();
        assertThat(follower.estimator.knows()).isFalse();
        follower.forS(40);
        assertThat(follower.arrival()).as("15 s to settle, 30 s to know").isEmpty();
        follower.forS(20);
        assertThat(follower.arrival()).isPresent();
        follower.leave();
        assertThat(follower.arrival()).isEmpty();
    }

    /** Measured: 32 % too early after two minutes, 25 to 37; 4 % after five, 11 early to 6 late. */
    @Test
    void heatTurnedDownByFortyPercent_isAdaptedToWithinFiveMinutes() {
        double[] before = errors(seed -> turnedDown(seed).error());
        double[] afterTwo = errors(seed -> turnedDown(seed).forS(120).error());
        double[] afterFive = errors(seed -> turnedDown(seed).forS(300).error());
        assertThat(middle(afterTwo)).isGreaterThan(middle(before) + 0.05).isBetween(-0.4, 0.0);
        assertAllWithin(0.15, afterFive);
    }

    /**
     * Heat that goes early in a cook is not always missed, so that the filters take the pan for a slow one. Measured four minutes after it
     * is back: one of twenty pans forecast for more than twice the time, two for more than 40 % more; before the heat's return was looked for five and six.
     */
    @Test
    void heatThatComesBack_isBelievedThoughNobodyMissedIt() {
        double[] late = errors(seed -> {
            Follower follower = new Follower(new SteadyPan(2.1, 0.40, 1.35, 0.1, seed), 1).forS(400);
            follower.pan.heat(0);
            follower.forS(360);
            follower.pan.heat(1.35);
            return follower.forS(240).error();
        });
        assertThat(Arrays.stream(late).filter(error -> error > 0.4).count())
                .as("%s", Arrays.toString(late))
                .isLessThanOrEqualTo(3);
        assertThat(Arrays.stream(late).filter(error -> error < -0.15).count()).isZero();
    }

    /**
     * Heat that was turned down to three tenths for six minutes leaves the filters a small pace, and as little doubt of it. Measured four minutes
     * after it is back: 9 % late at the middle of twenty pans, 23 at the most; before a climb that outruns what is known was looked for 85 and 109.
     */
    @Test
    void heatThatWasTurnedDownForAWhile_isBelievedToBeBack() {
        double[] late = errors(seed -> {
            Follower follower = new Follower(new SteadyPan(2.1, 0.40, 1.35, 0.1, seed), 1).forS(500);
            follower.pan.heat(0.3 * 1.35);
            follower.forS(360);
            follower.pan.heat(1.35);
            return follower.forS(240).error();
        });
        assertThat(middle(late)).as("%s", Arrays.toString(late)).isLessThan(0.2);
        assertAllWithin(0.4, late);
    }

    /**
     * Heat that was turned down for good is no heat that comes back, however often noise looks like it. Looked at every half minute for ten
     * minutes: one of twenty pans is called still meanwhile, and its climb afterwards taken for that of before; the others are 19 % early at the most.
     */
    @Test
    void heatThatWasTurnedDownForGood_isNotTakenForBack() {
        double[] worst = errors(seed -> {
            Follower follower = new Follower(new SteadyPan(2.1, 0.40, 1.35, 0.1, seed), 1).forS(500);
            follower.pan.heat(0.29);
            double least = follower.forS(420).error();
            for (int looks = 0; looks < 20; looks++) {
                least = Math.min(least, follower.forS(30).error());
            }
            return least;
        });
        assertThat(Arrays.stream(worst).filter(error -> error < -0.35).count())
                .as("%s", Arrays.toString(worst))
                .isLessThanOrEqualTo(1);
    }

    /** Measured: 1 % more 37 s after the stir's end, 0.1 % a minute later; the most 3.1 %. */
    @Test
    void aStirsDip_movesNothing() {
        double[] moved = errors(seed -> {
            Follower quiet = new Follower(SteadyPan.usual(seed), 1).forS(HALFWAY_S + 50);
            Follower stirred = new Follower(SteadyPan.usual(seed), 1)
                    .forS(HALFWAY_S)
                    .forS(50, t -> true, t -> t >= HALFWAY_S + 5 && t < HALFWAY_S + 13);
            return stirred.arrival().orElseThrow().s()
                            / quiet.arrival().orElseThrow().s()
                    - 1;
        });
        assertAllWithin(0.05, moved);
    }

    /** Measured half a minute after the gap: 4 % early, 10 early to 3 late; without a gap it is 8 early there. */
    @Test
    void aGapOfThreeMinutes_isBridged() {
        double[] errors = errors(seed -> new Follower(SteadyPan.usual(seed), 1)
                .forS(HALFWAY_S)
                .forS(180, t -> false, t -> false)
                .forS(30)
                .error());
        assertAllWithin(0.15, errors);
    }

    /** Measured half way up: 10.5, 9.8, 11.6 and 14.4 % early at the middle of twenty pans. */
    @Test
    void thePaceOfReadings_hardlyMattersAtTheMiddle() {
        double[] middles = new double[4];
        double[] periodsS = {0.1, 1, 5, 10};
        for (int i = 0; i < periodsS.length; i++) {
            double periodS = periodsS[i];
            middles[i] = middle(errors(seed ->
                    new Follower(SteadyPan.usual(seed), periodS).forS(HALFWAY_S).error()));
        }
        double spread = Arrays.stream(middles).max().orElseThrow()
                - Arrays.stream(middles).min().orElseThrow();
        assertThat(spread).as("%s", Arrays.toString(middles)).isLessThan(0.1);
    }

    /** Measured: 28 % early to 5 % late over all paces. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 5, 10})
    void thePaceOfReadings_leavesEveryForecastUsable(double periodS) {
        double[] errors = errors(seed ->
                new Follower(SteadyPan.usual(seed), periodS).forS(HALFWAY_S).error());
        assertAllWithin(0.35, errors);
    }

    /**
     * NCHFP's citrus marmalade: about 20 min to 8 °F; by its mass balance (computed) 2.02 kg at 35 % go in and 1.75 kW
     * drive off 46 g/min. Measured at half time: 9 % early, 13 to 2; 18.7 min in all.
     */
    @Test
    void marmaladeOfTheExample_isForetoldAtHalfTime() {
        double allS = marmalade(1).trulyS(Follower.GEL_RISE_C);
        assertThat(allS / 60).isCloseTo(20, within(2.0));
        double[] errors =
                errors(seed -> new Follower(marmalade(seed), 1).forS(allS / 2).error());
        assertThat(middle(errors)).as("%s", Arrays.toString(errors)).isCloseTo(0, within(0.1));
        assertAllWithin(0.2, errors);
    }

    /** 46 g/min by the mass balance (computed). */
    @Test
    void marmaladeOfTheExample_losesAsMuchWaterAsItShould() {
        Follower follower = new Follower(marmalade(1), 1).forS(marmalade(1).trulyS(Follower.GEL_RISE_C) * 0.8);
        double sugarG = 2020 * 0.35;
        assertThat(follower.estimator.perMinute() * sugarG).isCloseTo(46, within(0.2 * 46));
    }

    private static SteadyPan marmalade(long seed) {
        return new SteadyPan(2.02, 0.35, 1.75, 0.06, seed);
    }

    private static Follower turnedDown(long seed) {
        Follower follower = new Follower(SteadyPan.usual(seed), 1).forS(HALFWAY_S);
        follower.pan.heat(0.6 * 1.35);
        return follower;
    }

    private static double[] errors(LongToDoubleFunction ofSeed) {
        return LongStream.rangeClosed(1, SEEDS).mapToDouble(ofSeed).toArray();
    }

    private static void assertAllWithin(double limit, double[] parts) {
        for (int i = 0; i < parts.length; i++) {
            assertThat(Math.abs(parts[i]))
                    .as("seed %d of %s", i + 1, Arrays.toString(parts))
                    .isLessThan(limit);
        }
    }

    private static double middle(double[] values) {
        return Arrays.stream(values)
                .sorted()
                .skip(values.length / 2)
                .findFirst()
                .orElseThrow();
    }
}
