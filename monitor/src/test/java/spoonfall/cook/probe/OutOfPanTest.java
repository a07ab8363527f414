package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;

/** A probe that leaves the pan, reading by reading. The limits are those of {@link OutOfPan}, judgements without a source. */
final class OutOfPanTest {
    private static final double BOILS_C = 102;
    private static final int FALLS_S = 100;

    private final OutOfPan leaving = new OutOfPan(100);
    private Stage stage = Stage.ROLLING_BOIL;
    private double panC = Double.POSITIVE_INFINITY;
    private double heightC = BOILS_C;
    private double everyS = 1;
    private double stepC = 0.1;
    private double quickPerMinC = -3;
    private Condition last = Condition.ABSENT;

    /** After how many seconds of a fall the probe is first out; -1 if it is not within so many. */
    private int out(int withinS, DoubleUnaryOperator fallC) {
        int out = -1;
        double nextT = 0;
        for (int t = 0; t <= FALLS_S + withinS; t++) {
            if (t >= nextT) {
                leaving.accept(t, heightC - (t > FALLS_S ? fallC.applyAsDouble(t - FALLS_S) : 0));
                nextT += everyS;
            }
            last = judge(t, heightC);
            if (last == Condition.PRESENT && out < 0) {
                out = t - FALLS_S;
            }
        }
        return out;
    }

    private Condition judge(double t, double c) {
        Signals moving = MadeSignals.moving(t, c, quickPerMinC);
        Signals now = new Signals(t, c, c, moving.quick(), moving.steady(), c, c, stepC);
        return leaving.judge(t, stage, now, panC, false);
    }

    /** As a thermometer falls towards something so much colder, with a time constant of so many seconds. */
    private static DoubleUnaryOperator cooling(double byC, double overS) {
        return s -> byC * (1 - Math.exp(-s / overS));
    }

    /** So much cooler by something that is poured in evenly within so many seconds, read by a thermometer so late. */
    private static DoubleUnaryOperator poured(double byC, double pourS, double lagS) {
        return s -> byC / pourS * (late(s, lagS) - late(Math.max(0, s - pourS), lagS));
    }

    /** A reading of what rises by one a second. */
    private static double late(double s, double lagS) {
        return s + lagS * Math.expm1(-s / lagS);
    }

    @Test
    void whatHasFallenByThirtyDegrees_isOut() {
        assertThat(out(20, s -> Math.min(30.5, 10 * s))).isBetween(3, 6);
        assertThat(new OutOfPanTest().out(20, s -> Math.min(29.5, 10 * s))).isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0}, towards {1} °C less with a time constant of {2} s: {3}")
    @CsvSource({
        "PAST_GEL_POINT, 80, 240, false",
        "PAST_GEL_POINT, 80, 250, false",
        "AT_GEL_POINT, 80, 240, true",
        "PAST_GEL_POINT, 80, 15, true",
        "PAST_GEL_POINT, 80, 60, true",
        "PAST_GEL_POINT, 25, 30, true"
    })
    void pastItsSet_aPanThatFallsCameOffTheHeat_unlessItFallsAsNonePanCan(
            Stage at, double colderC, double overS, boolean out) {
        stage = at;
        assertThat(out(80, cooling(colderC, overS)) > 0).isEqualTo(out);
    }

    @Test
    void aFallTowardsSomethingFarColder_isSeenBeforeItIsThere() {
        assertThat(out(30, cooling(70, 20))).isBetween(5, 12);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"12, -1", "20, -1", "40, 1"})
    void aCupOfColdWater_takesItDownByADozenDegrees(double byC, int out) {
        assertThat(Integer.signum(out(30, cooling(byC, 8)))).isEqualTo(out);
    }

    @ParameterizedTest(name = "{0} °C within {1} s, {2} s late, every {3} s")
    @CsvSource({
        "20, 10, 5, 1",
        "25, 20, 3, 1",
        "20, 5, 8, 1",
        "28, 15, 6, 1",
        "20, 30, 5, 1",
        "25, 40, 8, 1",
        "20, 10, 5, 5"
    })
    void whatIsPouredIn_quickensFirstAndIsSoonOver(double byC, double pourS, double lagS, double every) {
        everyS = every;
        assertThat(out(48, poured(byC, pourS, lagS))).isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} °C with a time constant of {1} s")
    @CsvSource({"30, 20", "45, 30", "60, 60", "70, 20"})
    void whatFallsFastestAtFirst_andThenMoreSlowlyFarDown_isOut(double byC, double overS) {
        assertThat(out(48, cooling(byC, overS))).isBetween(6, 15);
    }

    @Test
    void aFallThatQuickensOn_isNoneOfAThermometer() {
        assertThat(out(23, s -> 0.02 * s * s)).isEqualTo(-1);
    }

    /** As even as a slow fall in the air at first, and then over at once. */
    @ParameterizedTest(name = "warming by {0} °C a minute: {1}")
    @CsvSource({"2, ABSENT", "0, PRESENT"})
    void aFallThatWasTakenForTheAirs_isThePansOnceThatWarms(double perMinC, Condition then) {
        DoubleUnaryOperator even = s -> Math.min(20, 0.7 * s) - Math.max(0, s - 28) * perMinC / 60;
        assertThat(out(15, even)).isBetween(8, 15);
        assertThat(new OutOfPanTest().after(60, even)).isEqualTo(then);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"6.1, 61", "5.9, -1"})
    void whatStaysDownForAMinute_isInSteam(double byC, int expected) {
        // seen to fall in the first second or two, and then it stays
        int out = out(70, s -> byC);
        assertThat(out < 0 ? -1 : Math.abs(out - expected) <= 2 ? expected : out)
                .isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} °C a second: {1}")
    @CsvSource({"0.009, 51", "0.005, 61"})
    void whatStillFallsAfterFiftySeconds_isInSteam_andWhatHardlyDoesAfterAMinute(double perS, int expected) {
        assertThat(out(70, s -> 7 + s * perS)).isBetween(expected - 2, expected + 2);
    }

    @ParameterizedTest(name = "{0} °C a second: {1}")
    @CsvSource({"0.009, -1", "0.005, 61"})
    void aPanOnASmallFlame_warmsSlowly(double perS, int expected) {
        int out = out(85, s -> 8 - Math.max(0, s - 10) * perS);
        assertThat(Math.abs(out - expected)).isLessThanOrEqualTo(2);
    }

    @ParameterizedTest(name = "{0} °C with a time constant of {1} s, every {2} s: {3}")
    @CsvSource({
        "15, 12, 1, false",
        "20, 30, 1, true",
        "12, 40, 1, true",
        "12, 12, 5, false",
        "15, 40, 5, true",
        "7, 16, 1, false"
    })
    void whatSinksOnForLongerThanColdWaterDoes_isInSteam(double byC, double overS, double every, boolean out) {
        everyS = every;
        assertThat(out(45, cooling(byC, overS)) > 10).isEqualTo(out);
    }

    @Test
    void coldWaterThatAPanWarms_isNoSteam() {
        assertThat(out(100, s -> 12 * (1 - Math.exp(-s / 14)) - Math.max(0, s - 14) * 0.06))
                .isEqualTo(-1);
    }

    @Test
    void whatWarmsAgain_isInThePan() {
        assertThat(out(100, s -> 8 - Math.max(0, s - 10) * 0.03)).isEqualTo(-1);
    }

    @Test
    void whatWarmsByLessThanSevenTenths_mayBeInSteam() {
        assertThat(out(100, s -> 8 - Math.min(0.6, Math.max(0, s - 10) * 0.03))).isPositive();
    }

    @ParameterizedTest(name = "from {0} °C, by {1} °C: {2}")
    @CsvSource({"100.5, 24, -1", "100.5, 26, 1", "100.7, 8, 1", "100.5, 8, -1"})
    void sugarThatGoesIntoFruit_takesItDownByTwentyFiveDegreesAtMost(double fromC, double byC, int out) {
        heightC = fromC;
        // at once, so that only its depth tells, and whether it stays there
        assertThat(Integer.signum(out(70, s -> byC))).isEqualTo(out);
    }

    @ParameterizedTest(name = "from {0} °C, by {1} °C: {2}")
    @CsvSource({"100.9, 28, false", "100.9, 46, true", "101, 29, false", "101, 31, true"})
    void aPanWithoutMuchSugar_mustFallFurtherToBeSure(double fromC, double byC, boolean sure) {
        heightC = fromC;
        assertThat(out(40, s -> byC) >= 0).isEqualTo(sure);
    }

    /** Sugar takes fruit down by 25 °C at most; whatever else goes in, the pan warms again. */
    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"24.5, -1", "25.5, 1", "50, 1"})
    void aPanThatWarms_mustFallFurtherThanSugarTakesIt_andStayThere(double byC, int out) {
        stage = Stage.WARMING;
        heightC = 80;
        assertThat(out(89, s -> byC)).isEqualTo(-1);
        OutOfPanTest longer = new OutOfPanTest();
        longer.stage = Stage.WARMING;
        longer.heightC = 80;
        assertThat(Integer.signum(longer.out(100, s -> byC))).isEqualTo(out);
        OutOfPanTest waiting = new OutOfPanTest();
        waiting.stage = Stage.WAITING;
        waiting.heightC = 80;
        assertThat(waiting.out(100, s -> byC)).isEqualTo(-1);
    }

    /** A kilo of cold fruit into a cup of hot water: it falls as far as out of the pan, and warms by a degree and a half a minute, read by a late thermometer. */
    @Test
    void coldFruitInALittleHotWater_isNoProbeOutOfIt() {
        stage = Stage.WARMING;
        heightC = 85;
        assertThat(out(180, s -> cooling(60, 12).applyAsDouble(s) - s * 1.5 / 60))
                .isEqualTo(-1);
    }

    @ParameterizedTest(name = "in {0} s")
    @CsvSource({"15", "40"})
    void ofAPanThatWarms_itIsOutOnceItCoolsOnWithoutWarming(double overS) {
        stage = Stage.WARMING;
        heightC = 80;
        assertThat(out(110, cooling(55, overS))).isBetween(88, 110);
    }

    @Test
    void aBaseThatWasHotter_isNoHeightToFallFrom() {
        panC = BOILS_C - 5;
        // seven degrees down from the reading, three and a half from a degree and a half above the pan
        assertThat(out(100, s -> 7)).isEqualTo(-1);
        OutOfPanTest known = new OutOfPanTest();
        known.panC = BOILS_C;
        assertThat(known.out(100, s -> 7)).isPositive();
    }

    @Test
    void whatFallsByLessThanFourDegreesInHalfAMinute_isNotLookedAt() {
        assertThat(out(120, s -> Math.min(20, s * 0.12))).isEqualTo(-1);
    }

    @Test
    void afterTwoMinutes_aFallIsForgotten() {
        // it has warmed again, and only then stays down
        assertThat(out(200, s -> s < 60 ? 7 - s * 0.04 : 4.5)).isEqualTo(-1);
    }

    @Test
    void oneWildReading_isNotOut() {
        assertThat(out(60, s -> s == 1 ? 80 : 0)).isEqualTo(-1);
    }

    @Test
    void aThermometerThatSpeaksEveryTenSeconds_isTakenReadingByReading() {
        everyS = 10;
        assertThat(out(60, cooling(75, 15))).isBetween(10, 40);
        OutOfPanTest cold = new OutOfPanTest();
        cold.everyS = 10;
        assertThat(cold.out(100, s -> 12 * (1 - Math.exp(-s / 15)) - Math.max(0, s - 20) * 0.1))
                .isEqualTo(-1);
    }

    @Test
    void itIsBack_whenItIsAlmostWhereItWas_orBoilsAgain() {
        out(40, s -> 60);
        assertThat(last).isEqualTo(Condition.PRESENT);
        assertThat(back(99.9, -3)).as("two degrees and more below").isEqualTo(Condition.PRESENT);
        assertThat(back(100.1, -3)).isEqualTo(Condition.ABSENT);
        OutOfPanTest boils = new OutOfPanTest();
        boils.heightC = 104;
        boils.out(40, s -> 60);
        assertThat(boils.back(100.3, 1.3)).as("it still moves").isEqualTo(Condition.PRESENT);
        assertThat(boils.back(100.1, 0)).as("it does not boil").isEqualTo(Condition.PRESENT);
        assertThat(boils.back(100.3, -1.1)).isEqualTo(Condition.ABSENT);
    }

    /** Cold fruit over a low flame: it stays down for a minute, as steam does, and is warmed once the flame is turned up. */
    @ParameterizedTest(name = "by {0} °C, warming by {1} °C a minute: {2}")
    @CsvSource({"20, 2.5, ABSENT", "20, 1, PRESENT", "45, 2.5, PRESENT"})
    void whatWarmsEvenly_isAPanIntoWhichSomethingColdWent(double byC, double perMinC, Condition then) {
        DoubleUnaryOperator cold = s -> Math.min(byC, 4 * s) - Math.max(0, s - 80) * perMinC / 60;
        assertThat(out(75, cold)).isPositive();
        assertThat(new OutOfPanTest().after(180, cold)).isEqualTo(then);
    }

    @Test
    void whatComesBackAsAThermometerDoes_isNotBackBeforeItIsThere() {
        DoubleUnaryOperator comes = s -> s < 60 ? 20 : 5 + 15 * Math.exp(-(s - 60) / 12);
        for (int s = 62; s < 160; s += 7) {
            assertThat(new OutOfPanTest().after(s, comes)).as("%d s", s).isEqualTo(Condition.PRESENT);
        }
    }

    private Condition after(int withinS, DoubleUnaryOperator fallC) {
        out(withinS, fallC);
        return last;
    }

    private double backT = FALLS_S + 40;

    private Condition back(double c, double perMinC) {
        quickPerMinC = perMinC;
        for (int i = 0; i < 5; i++) {
            backT++;
            leaving.accept(backT, c);
        }
        return judge(backT, c);
    }

    @Test
    void whileItIsOutAndSilent_nothingIsDecided() {
        out(40, s -> 60);
        assertThat(judge(FALLS_S + 60, BOILS_C)).isEqualTo(Condition.UNDECIDED);
        assertThat(new OutOfPanTest().judge(60, BOILS_C)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void afterItIsBack_anotherFallIsSeenAnew() {
        out(40, s -> 60);
        back(102, 0);
        for (int i = 0; i < 40; i++) {
            back(102, 0);
        }
        assertThat(back(50, -3)).isEqualTo(Condition.PRESENT);
    }
}
