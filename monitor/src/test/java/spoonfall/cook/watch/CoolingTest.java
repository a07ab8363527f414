package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/** A pan that has fallen below its height, second by second. The limits are those of {@link Cooling}, judgements without a source. */
final class CoolingTest {
    private static final double HEIGHT_C = 102;

    private final Cooling cooling = new Cooling(100);
    private Stages stages = new Stages(MadePan.SETTINGS);
    private Signals now = MadeSignals.at(0, 0);
    private double t;

    @BeforeEach
    void boiled() {
        for (int i = -30; i < 0; i++) {
            stages.follow(MadeSignals.at(i, HEIGHT_C));
        }
    }

    private void second(Signals signals) {
        now = signals;
        cooling.endSecond(now, stages);
        t++;
    }

    private void stand(int seconds, double c) {
        move(seconds, c, 0);
    }

    /** Stands at a height, but moves by so much a minute by its lines. */
    private void move(int seconds, double c, double perMinC) {
        for (int i = 0; i < seconds; i++) {
            second(MadeSignals.moving(t, c, perMinC));
        }
    }

    /** Falls evenly from a height, by so much a minute; its lines say that it has been falling by 3 °C. */
    private void fall(int seconds, double fromC, double perMinC) {
        for (int i = 0; i < seconds; i++) {
            second(MadeSignals.moving(t, fromC - perMinC * i / 60, -3));
        }
    }

    private static Signals coarse(Signals signals, double stepC) {
        return new Signals(
                signals.t(),
                signals.levelC(),
                signals.trendC(),
                signals.quick(),
                signals.steady(),
                signals.peakC(),
                signals.earlierPeakC(),
                stepC);
    }

    @ParameterizedTest(name = "{0} °C in steps of {1} °C: {2}")
    @CsvSource({"0.79, 0.01, false", "0.81, 0.01, true", "0.84, 0.5, false", "0.86, 0.5, true", "0.81, 1, true"})
    void itIsLow_whenItHasFallenByEightTenthsOrSomeSteps(double byC, double stepC, boolean low) {
        stand(60, HEIGHT_C);
        second(coarse(MadeSignals.at(t, HEIGHT_C - byC), stepC));
        assertThat(cooling.low()).isEqualTo(low);
    }

    @Test
    void itIsLow_whenItsLevelAndItsTrendAre() {
        stand(60, HEIGHT_C);
        second(MadeSignals.at(t, 101).withTrend(101.5));
        assertThat(cooling.low()).isFalse();
        second(MadeSignals.at(t, 101.5).withTrend(101));
        assertThat(cooling.low()).isFalse();
        second(MadeSignals.at(t, 101).withTrend(101.1));
        assertThat(cooling.low()).isTrue();
    }

    @Test
    void itsHeight_isTheLowerOfItsLevelAndItsTrend() {
        for (int i = 0; i < 60; i++) {
            second(MadeSignals.at(t, HEIGHT_C).withTrend(101.5));
        }
        stand(1, 101.1);
        assertThat(cooling.low()).isFalse();
        stand(1, 100.6);
        assertThat(cooling.low()).isTrue();
    }

    @ParameterizedTest(name = "from {0} °C: {1}")
    @CsvSource({"101, true", "100.99, false"})
    void aPanWithoutSugar_mayBeTurnedDown(double heightC, boolean low) {
        stand(60, heightC);
        stand(1, 99);
        assertThat(cooling.low()).isEqualTo(low);
    }

    @Test
    void aPanThatNeverBoiled_doesNotCool() {
        stages = new Stages(MadePan.SETTINGS);
        stand(60, HEIGHT_C);
        stand(10, 100);
        assertThat(cooling.low()).isFalse();
    }

    @Test
    void aHeightOfMoreThanTenMinutesAgo_isNone() {
        stand(1, HEIGHT_C);
        stand(600, 101.5);
        move(1, 101.1, -1);
        assertThat(cooling.low()).isTrue();
        CoolingTest later = new CoolingTest();
        later.boiled();
        later.stand(1, HEIGHT_C);
        later.stand(605, 101.5);
        later.move(1, 101.1, -1);
        assertThat(later.cooling.low()).isFalse();
    }

    @Test
    void howLongItCools_countsFromItsLastPointAtItsHeight_forAsLongAsItFalls() {
        stand(61, HEIGHT_C);
        move(10, 101.6, -1);
        move(10, 101.4, -1);
        assertThat(cooling.forS(now)).isZero();
        move(1, 101.1, -1);
        assertThat(cooling.forS(now))
                .as("its lines are asked from the next second on")
                .isZero();
        move(1, 101.1, -1);
        // the last point that was at least 0.35 °C above 101.1 °C is that of 70 s
        assertThat(cooling.forS(now)).isEqualTo(82 - 70);
        move(10, 101, -1);
        assertThat(cooling.forS(now)).isEqualTo(92 - 70);
    }

    @ParameterizedTest(name = "{0} and {1} °C a minute: {2}")
    @CsvSource({"-0.11, -0.11, true", "-0.1, -0.11, false", "-0.11, -0.1, false"})
    void itCools_whileBothOfItsLinesFall(double quickPerMinC, double steadyPerMinC, boolean cools) {
        stand(60, HEIGHT_C);
        move(5, 101, -1);
        second(MadeSignals.lines(t, 101, HEIGHT_C, quickPerMinC, steadyPerMinC));
        assertThat(cooling.forS(now) > 0).isEqualTo(cools);
    }

    @Test
    void withoutLines_nothingIsToldOfItsPace() {
        stand(60, HEIGHT_C);
        move(5, 101, -1);
        second(MadeSignals.at(t, 101));
        assertThat(cooling.forS(now)).isZero();
    }

    @Test
    void whatStaysWhereItFell_jumped_andWhatFindsANewLowEveryMinuteCools() {
        stand(60, HEIGHT_C);
        move(1, 101, -1);
        move(59, 100.85, -1);
        assertThat(cooling.forS(now)).as("0.15 °C lower is no new low").isPositive();
        move(1, 100.85, -1);
        assertThat(cooling.forS(now)).isZero();
        move(1, 100.84, -1);
        assertThat(cooling.forS(now)).isPositive();
        move(59, 100.84, -1);
        assertThat(cooling.forS(now)).isPositive();
        move(1, 100.84, -1);
        assertThat(cooling.forS(now)).isZero();
    }

    @ParameterizedTest(name = "{0} °C in steps of {1} °C: {2}")
    @CsvSource({"0.35, 0.01, true", "0.34, 0.01, false", "0.46, 0.5, true", "0.44, 0.5, false"})
    void itIsBack_whenItIsAlmostAtItsHeight(double belowC, double stepC, boolean low) {
        stand(60, HEIGHT_C);
        stand(5, 101);
        assertThat(cooling.low()).isTrue();
        second(coarse(MadeSignals.at(t, HEIGHT_C - belowC), stepC));
        assertThat(cooling.low()).isEqualTo(low);
    }

    @Test
    void whenItIsBack_otherSignsAreLate() {
        stand(60, HEIGHT_C);
        stand(5, 101);
        stand(1, 101.9);
        assertThat(cooling.low()).isFalse();
        stand(44, 101.9);
        assertThat(cooling.warms(now)).isTrue();
        stand(1, 101.9);
        assertThat(cooling.warms(now)).isFalse();
    }

    @Test
    void itWarms_whenItIsThreeTenthsAboveItsLowest() {
        stand(60, HEIGHT_C);
        assertThat(cooling.warms(now)).isFalse();
        stand(5, 101);
        stand(5, 100);
        second(MadeSignals.at(t, 100.25));
        assertThat(cooling.warms(now)).isFalse();
        second(MadeSignals.at(t, 100.35));
        assertThat(cooling.warms(now)).isTrue();
        assertThat(cooling.warms(coarse(now, 0.5)))
                .as("of a coarse thermometer less than a step")
                .isFalse();
        assertThat(cooling.warms(coarse(MadeSignals.at(t, 100.65), 0.5))).isTrue();
    }

    @Test
    void itTurns_whenItIsHigherThanTwentySecondsAgo_thoughItsLinesStillFall() {
        stand(60, HEIGHT_C);
        assertThat(cooling.turns(now)).isFalse();
        fall(60, HEIGHT_C, 3);
        assertThat(cooling.turns(now)).isFalse();
        move(2, 99.1, -3);
        assertThat(cooling.forS(now)).isPositive();
        assertThat(cooling.turns(now)).as("higher than 5 s ago").isFalse();
        move(2, 100.2, -3);
        assertThat(cooling.turns(now)).as("higher than 20 s ago").isTrue();
        fall(30, 100.2, 3);
        assertThat(cooling.turns(now)).isFalse();
    }

    @ParameterizedTest(name = "after 3 °C a minute {0}: {1}")
    @CsvSource({"1.2, true", "1.5, false", "0, true", "3, false"})
    void itTurns_whenItFallsByLessThanHalfAsMuchAsOverTwoMinutes(double perMinC, boolean turns) {
        stand(60, HEIGHT_C);
        fall(60, HEIGHT_C, 3);
        fall(30, HEIGHT_C - 3, perMinC);
        assertThat(cooling.turns(now)).isEqualTo(turns);
    }

    @Test
    void thatItComesUp_isSeenThoughItsHeightWasHotter_butNotOnceTheReadingsBeganAnew() {
        stand(60, HEIGHT_C);
        fall(60, HEIGHT_C, 3);
        cooling.forgetTheHeight();
        move(3, 102, -3);
        assertThat(cooling.low()).isFalse();
        assertThat(cooling.turns(now)).isTrue();
        cooling.restart();
        move(3, 102, -3);
        assertThat(cooling.turns(now)).isFalse();
    }

    @Test
    void aPanThatWarmedAgainAndFallsNoLower_boilsOnFromThere() {
        stand(60, HEIGHT_C);
        stand(1, 101);
        stand(149, 101.4);
        assertThat(cooling.low()).isTrue();
        stand(1, 101.4);
        assertThat(cooling.low()).isTrue();
        stand(1, 101.4);
        assertThat(cooling.low()).isFalse();
        stand(10, 100.9);
        assertThat(cooling.low()).as("0.5 °C below its new height").isFalse();
    }

    @Test
    void aPanThatStaysLow_isLowForAsLongAsThatLasts() {
        stand(60, HEIGHT_C);
        stand(500, 101.1);
        assertThat(cooling.low()).isTrue();
    }

    @ParameterizedTest(name = "{0} s of silence")
    @CsvSource({"25", "26"})
    void afterASilence_itCoolsSinceItIsHeardAgain(int silentS) {
        stand(61, HEIGHT_C);
        move(5, 101, -1);
        t += silentS - 1;
        move(1, 100.5, -1);
        assertThat(cooling.forS(now)).isEqualTo(silentS > 25 ? 0 : now.t() - 60);
        move(5, 100.5, -1);
        assertThat(cooling.forS(now)).isEqualTo(silentS > 25 ? 5 : now.t() - 60);
    }

    @Test
    void readingsThatBeginAnew_haveNotFallen() {
        stand(60, HEIGHT_C);
        stand(10, 101);
        cooling.restart();
        assertThat(cooling.low()).isFalse();
        stand(10, 101);
        assertThat(cooling.low()).isFalse();
    }

    /** As after one test that was followed by another. */
    @Test
    void itsTime_beginsAnewWhenItHasWarmedBetween() {
        stand(60, HEIGHT_C);
        move(40, 101, -1);
        move(10, 100.5, -1);
        assertThat(cooling.forS(now)).isBetween(45.0, 60.0);
        move(20, 100.9, 1);
        assertThat(cooling.forS(now)).isZero();
        move(10, 100.3, -1);
        assertThat(cooling.forS(now)).isBetween(5.0, 11.0);
    }
}
