package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.KnownPan;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;
import spoonfall.series.RobustLine;

/** Each limit of a base that catches from both sides: what is known stands still, and the signals are made by hand. */
final class ScorchingLimitsTest {
    private static final int FAULT_S = (int) KnownPan.UNTIL_S;

    /** So long it has climbed when it is judged. */
    private static final int CLIMBED_S = 45;

    /** What was known then counts, and is taken down every five seconds from its boil at 21 s on. */
    private static final int KNOWN_S = 821;

    private Scorching scorching = new Scorching(100);
    private KnownPan pan = known(t -> 0);
    private double perMinC = 3;
    private double steadyPerMinC = 3;
    private double slopeError;
    private double stepC = 0.01;
    private double earlierPeakC = 101;
    private double fromC = pan.panC(FAULT_S);
    private boolean stands;
    private DoubleUnaryOperator climbC = s -> 3 * s / 60;

    private KnownPan known(DoubleUnaryOperator offC) {
        scorching = new Scorching(100);
        return KnownPan.watched(offC, made -> scorching.judge(made.stages(), made.now(), made.forecaster(), false));
    }

    private Condition judge(int afterS) {
        double t = FAULT_S + afterS;
        double c = fromC + climbC.applyAsDouble(afterS);
        Signals now = new Signals(
                t,
                c,
                c,
                Optional.of(line(t, c, perMinC)),
                Optional.of(line(t, c, steadyPerMinC)),
                c,
                earlierPeakC,
                stepC);
        return scorching.judge(pan.stages(), now, pan.forecaster(), stands);
    }

    private RobustLine line(double t, double c, double slopePerMinC) {
        return new RobustLine(slopePerMinC / 60, c, t, 0.01, slopeError);
    }

    private Condition climb() {
        return climb(CLIMBED_S);
    }

    private Condition climb(int seconds) {
        Condition last = Condition.ABSENT;
        for (int i = 1; i <= seconds; i++) {
            last = judge(i);
        }
        return last;
    }

    @Test
    void aClimbOfThreeDegreesAMinute_catches() {
        assertThat(climb()).isEqualTo(Condition.PRESENT);
        assertThat(scorching.text().title()).contains("it climbs {diff:3.0} a minute", "allows {diff:0.1}");
    }

    @ParameterizedTest(name = "{0} °C a minute, steps of {1} °C: {2}")
    @CsvSource({
        "0.601, 0.01, PRESENT",
        "0.599, 0.01, UNDECIDED",
        "0.301, 0.01, UNDECIDED",
        "0.299, 0.01, ABSENT",
        "0.801, 0.2, PRESENT",
        "0.799, 0.2, UNDECIDED"
    })
    void aClimb_isOfSoManyDegreesAMinuteAndOfSoManySteps(double climbs, double step, Condition expected) {
        perMinC = climbs;
        stepC = step;
        steadyPerMinC = 0;
        assertThat(climb()).isEqualTo(expected);
    }

    @Test
    void aClimbThatMayWellBeLess_isNotSure() {
        perMinC = 0.8;
        slopeError = 0.15 / 60;
        assertThat(climb()).isEqualTo(Condition.PRESENT);
        slopeError = 0.25 / 60;
        assertThat(judge(CLIMBED_S + 1)).isEqualTo(Condition.UNDECIDED);
    }

    @ParameterizedTest(name = "{0} °C a minute over two minutes: {1}")
    @CsvSource({"0.801, PRESENT", "0.799, UNDECIDED"})
    void ofACoarseThermometer_theLineOfTwoMinutesCounts(double climbs, Condition expected) {
        stepC = 0.5;
        perMinC = 0;
        steadyPerMinC = climbs;
        assertThat(climb(130)).isEqualTo(expected);
    }

    @Test
    void aPanThatClimbsFastByItself_mayClimbThreeTimesAsFast() {
        pan = known(t -> 0.25 * t / 60 - 1);
        fromC = pan.panC(FAULT_S);
        double allowed = 3 * pan.climbPerMinC(KNOWN_S);
        assertThat(allowed).isGreaterThan(0.7);
        perMinC = allowed + 0.03;
        assertThat(climb()).isEqualTo(Condition.PRESENT);
        perMinC = allowed - 0.03;
        assertThat(judge(CLIMBED_S + 1)).isEqualTo(Condition.UNDECIDED);
    }

    @ParameterizedTest(name = "{0} °C higher: {1}")
    @CsvSource({"0.02, PRESENT", "-0.02, UNDECIDED"})
    void itClimbs_toNewHeights(double byC, Condition expected) {
        double c = fromC + 3 * CLIMBED_S / 60.0;
        earlierPeakC = c - 0.3 - pan.climbPerMinC(KNOWN_S) - byC;
        assertThat(climb()).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} °C higher: {1}")
    @CsvSource({"0.02, PRESENT", "-0.02, UNDECIDED"})
    void itClimbs_aboveWhereItWasDue(double byC, Condition expected) {
        assertThat(climbTo(0.1 + byC)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} °C higher: {1}")
    @CsvSource({"0.02, PRESENT", "-0.02, UNDECIDED"})
    void aboveWhatNoisyReadingsShow_itMustBeFurther(double byC, Condition expected) {
        pan = known(t -> 0.1 * Math.sin(2.3 * t) + 0.1 * Math.sin(0.37 * t));
        double aboveC = 5 * pan.noiseC(KNOWN_S + 15);
        assertThat(aboveC).isGreaterThan(0.15);
        assertThat(climbTo(aboveC + byC)).isEqualTo(expected);
    }

    /** Climbs for a minute, which ends so much above where it was due. */
    private Condition climbTo(double aboveDueC) {
        fromC = pan.dueC(KNOWN_S + 15) + aboveDueC - 3;
        earlierPeakC = 100;
        return climb(CLIMBED_S + 15);
    }

    @ParameterizedTest(name = "{0} s after it stood: {1}")
    @CsvSource({"180, UNDECIDED", "181, PRESENT"})
    void soLongAfterAStall_itIsOnItsWayBack(int seconds, Condition expected) {
        stands = true;
        judge(0);
        stands = false;
        assertThat(climb(seconds)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "a share of {0}: {1}")
    @CsvSource({"0.74, PRESENT", "0.76, UNDECIDED"})
    void whatDoesMostOfItsClimbWithinAThirdOfTheTime_hasJumped(double share, Condition expected) {
        for (int begins : new int[] {1, 16, 31}) {
            ScorchingLimitsTest one = new ScorchingLimitsTest();
            one.climbC = s -> 2.25
                    * (share * part(s, begins)
                            + (1 - share) / 2 * (part(s, (begins + 15) % 45) + part(s, (begins + 30) % 45)));
            assertThat(one.climb(46)).as("from second %d on", begins).isEqualTo(expected);
        }
    }

    private static double part(double s, double begins) {
        return Math.max(0, Math.min(1, (s - begins) / 15));
    }

    @ParameterizedTest
    @ValueSource(ints = {179, 180})
    void itsFirstThreeMinutesOfBoiling_areNotJudged(int boilingS) {
        Scorching young = new Scorching(100);
        Condition[] last = {Condition.ABSENT};
        MadePan made = MadePan.climbing(1.5, t -> 3 * Math.max(0, t - 170) / 60);
        double boilsT = 21;
        made.watch(boilsT + boilingS, now -> {
            double c = now.levelC();
            Signals climbing = new Signals(now.t(), c, c, Optional.of(line(now.t(), c, 3)), now.steady(), c, 100, 0.01);
            last[0] = young.judge(made.stages(), climbing, made.forecaster(), false);
        });
        assertThat(made.stages().boilingForS(made.t())).isEqualTo(boilingS);
        assertThat(last[0]).isEqualTo(boilingS < 180 ? Condition.UNDECIDED : Condition.PRESENT);
    }

    @Test
    void withoutItsLinesOrWithoutAnythingKnown_itIsUndecided() {
        climb();
        Signals without = MadeSignals.at(FAULT_S + CLIMBED_S + 1, 106);
        assertThat(scorching.judge(pan.stages(), without, pan.forecaster(), false))
                .isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void whenTheReadingsBeginAnew_nothingIsKnownForTwoMinutes() {
        climb();
        scorching.restart();
        for (int i = 1; i < 120; i++) {
            assertThat(judge(CLIMBED_S + i)).isEqualTo(Condition.UNDECIDED);
        }
    }
}
