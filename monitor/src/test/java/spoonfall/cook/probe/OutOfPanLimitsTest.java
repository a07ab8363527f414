package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;

/** Falls that meet the limits of {@link OutOfPan} exactly, or that end in another way than they began. Judgements without a source. */
final class OutOfPanLimitsTest {
    private static final double BOILS_C = 102;

    private final OutOfPan leaving = new OutOfPan(100);
    private double stepC = 0.1;
    private double t;
    private boolean sugarMayGo;

    /** Takes one reading after so many seconds. */
    private Condition hear(double afterS, double c) {
        t += afterS;
        leaving.accept(t, c);
        return judge(-3);
    }

    private Condition judge(double perMinC) {
        Signals moving = MadeSignals.moving(t, BOILS_C, perMinC);
        Signals now = new Signals(t, BOILS_C, BOILS_C, moving.quick(), moving.steady(), BOILS_C, BOILS_C, stepC);
        return leaving.judge(t, Stage.ROLLING_BOIL, now, Double.POSITIVE_INFINITY, sugarMayGo);
    }

    /** Boils for a while at so many °C. */
    private void boils(double c, double everyS) {
        for (int i = 0; i < 20; i++) {
            hear(everyS, c);
        }
    }

    /** After how many seconds of what it does below its boil, at most so many, it is out; -1 if it is not. */
    private int out(int withinS, double boilsC, DoubleUnaryOperator belowC) {
        boils(boilsC, 1);
        for (int s = 1; s <= withinS; s++) {
            if (hear(1, boilsC - belowC.applyAsDouble(s)) == Condition.PRESENT) {
                return s;
            }
        }
        return -1;
    }

    @ParameterizedTest(name = "from {0} °C, by {1} °C: {2}")
    @CsvSource({"102, 30, true", "102, 29, false", "100.5, 45, true", "100.6, 8, true", "100.5, 25, true"})
    void exactlySoFar_isEnough(double fromC, double byC, boolean out) {
        // 40 s are too short to tell by where it stays
        int withinS = byC < 26 ? 70 : 40;
        assertThat(out(withinS, fromC, s -> byC) > 0).isEqualTo(out);
    }

    @Test
    void sixDegreesForFiftySeconds_areEnough_whereItSinksOn() {
        // most of its last readings are down from its second second on
        assertThat(out(100, BOILS_C, s -> 6 + 0.02 * s)).isEqualTo(52);
    }

    @Test
    void sixDegreesForAMinute_areEnough_whereItStays() {
        assertThat(out(100, BOILS_C, s -> 6)).isEqualTo(62);
    }

    @Test
    void sixDegrees_areNotEnough_whereItWarmsAgain() {
        assertThat(out(100, BOILS_C, s -> 6.9 - 0.02 * Math.max(0, s - 30))).isEqualTo(-1);
    }

    @Test
    void aFallOfFourDegrees_isFollowedUntilItIsSixDeep_andASmallerOneIsNot() {
        assertThat(out(110, BOILS_C, s -> 4 + Math.max(0, s - 60) * 0.05)).isEqualTo(101);
        assertThat(new OutOfPanLimitsTest().out(118, BOILS_C, s -> 3.9 + Math.max(0, s - 60) * 0.05))
                .isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"123, true", "124, false"})
    void aFall_isFollowedForTwoMinutes(int deepAfterS, boolean out) {
        // first seen at 2 s; the last three readings are their middle one
        assertThat(out(130, BOILS_C, s -> s < deepAfterS - 1 ? 4.5 : 6.1) > 0).isEqualTo(out);
    }

    @Test
    void aFallThatCameBackWithinFourDegrees_isForgotten() {
        assertThat(out(110, BOILS_C, s -> s < 20 ? 5 : 3.5 + Math.max(0, s - 40) * 0.05))
                .isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} °C higher now and then")
    @ValueSource(doubles = {0, 8})
    void aPanThatFellOnceAndLaterSinks_isNotFarBelowWhereItFellFrom(double wildC) {
        // by six degrees a minute
        DoubleUnaryOperator sinks = s -> 4.5 + Math.max(0, s - 150) * 0.1 - (s % 10 == 0 ? wildC : 0);
        assertThat(out(450, BOILS_C, sinks)).isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} °C a second: {1}")
    @CsvSource({"0.15, false", "0.2, true"})
    void aSlowFall_isSeenWhenItIsFourDegreesBelowHalfAMinuteAgo(double perS, boolean out) {
        assertThat(out(110, BOILS_C, s -> Math.min(20, perS * s)) > 0).isEqualTo(out);
    }

    @Test
    void whereItWasMoreThanHalfAMinuteAgo_isNoHeightToFallFrom() {
        assertThat(out(200, BOILS_C, s -> Math.min(6, 0.12 * s) + (s > 80 ? 4.5 : 0)))
                .isEqualTo(-1);
    }

    @ParameterizedTest(name = "every {0} s: {1}")
    @CsvSource({"40, PRESENT", "59, PRESENT", "61, ABSENT"})
    void whoIsHeardSeldom_fellFromItsLastReading_unlessThatIsMoreThanAMinuteOld(double everyS, Condition expected) {
        boils(BOILS_C, everyS);
        assertThat(hear(everyS, BOILS_C - 35)).isEqualTo(expected);
    }

    @Test
    void aThinPan_mustBeBoundForSomethingColderStill() {
        DoubleUnaryOperator colder = s -> 28 * (1 - Math.exp(-s / 8));
        assertThat(out(40, 100.9, colder)).isEqualTo(-1);
        assertThat(new OutOfPanLimitsTest().out(40, 101.1, colder)).isPositive();
    }

    @ParameterizedTest(name = "from {0} °C, simmered: {1}, by {2} °C: {3}")
    @CsvSource({
        "100.5, true, 29.9, false",
        "100.5, true, 30, true",
        "100.5, false, 29.9, true",
        "100.9, true, 29.9, false",
        "100.9, false, 29.9, true"
    })
    void whatSimmeredUntilJustNow_maySugarTakeDownByThirtyDegrees(
            double fromC, boolean simmered, double byC, boolean out) {
        sugarMayGo = simmered;
        assertThat(out(70, fromC, s -> byC) > 0).isEqualTo(out);
    }

    @Test
    void whatSimmeredWhenItFell_mayHaveSugarForThatFallOnly() {
        sugarMayGo = true;
        assertThat(out(10, 100.9, s -> 20)).isEqualTo(-1);
        sugarMayGo = false;
        assertThat(stays(110, 80.9)).isEqualTo(-1);
        assertThat(stays(20, 100.9)).isEqualTo(-1);
        assertThat(stays(110, 80.9)).isPositive();
    }

    /** After how many seconds at that height, at most so many, it is out; -1 if it is not. */
    private int stays(int forS, double atC) {
        for (int s = 1; s <= forS; s++) {
            if (hear(1, atC) == Condition.PRESENT) {
                return s;
            }
        }
        return -1;
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"6, false", "7, true"})
    void aSteepFall_isToldOnceItIsSixSecondsOld(int withinS, boolean out) {
        // a degree deep in its first second
        assertThat(out(withinS, BOILS_C, s -> 60 * (1 - Math.exp(-s / 20.0))) > 0)
                .isEqualTo(out);
    }

    @ParameterizedTest(name = "at {0} °C, {1} °C a minute: {2}")
    @CsvSource({
        "102, -3, ABSENT",
        "101.9, -3, PRESENT",
        "100.3, 1.1, ABSENT",
        "100.3, 1.2, PRESENT",
        "100.2, 0, PRESENT"
    })
    void itIsBack_twoDegreesBelowWhereItWas_orWhereItStandsAboveBoilingWater(
            double c, double perMinC, Condition expected) {
        assertThat(out(20, 104, s -> 60)).isPositive();
        for (int i = 0; i < 5; i++) {
            t++;
            leaving.accept(t, c);
        }
        assertThat(judge(perMinC)).isEqualTo(expected);
    }
}
