package spoonfall.cook.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;

/** Meets the limits of the sugar that goes in from both sides, with levels made by hand. Water boils at 100 °C; they are looked at every 5 s. */
final class SugarInLimitsTest {
    private static final int SLOT_S = 5;
    private static final int LONG_S = 120;

    private final SugarIn sugar = new SugarIn(100);
    private double t;
    private double c;
    private double stepC = 0.01;

    /** Stays for so many seconds at so many °C. */
    private SugarInLimitsTest at(double c, int s) {
        return from(c, 0, s);
    }

    /** Goes on for so many seconds, and climbs by so much in each half of a minute. */
    private SugarInLimitsTest goesOn(double perHalfMinuteC, int s) {
        return from(c, perHalfMinuteC, s);
    }

    private SugarInLimitsTest from(double fromC, double perHalfMinuteC, int s) {
        c = fromC;
        for (int i = 0; i < s; i++, t++) {
            sugar.endSecond(new Signals(t, c, c, Optional.empty(), Optional.empty(), c, c, stepC));
            c += perHalfMinuteC / 30;
        }
        return this;
    }

    private double stoodT() {
        return t - SLOT_S;
    }

    @ParameterizedTest(name = "at {0} °C: {1}")
    @CsvSource({"93.9, false", "94.1, true", "100.79, true", "100.81, false"})
    void whatStandsFromJustBelowTheBoilToAThinSyrup_mayGetItsSugar_forFourMinutes(double standsC, boolean may) {
        assertThat(sugar.mayGo(0)).isFalse();
        at(standsC, LONG_S);
        assertThat(sugar.mayGo(stoodT() + 239)).isEqualTo(may);
        assertThat(sugar.mayGo(stoodT() + 240)).isFalse();
    }

    @ParameterizedTest(name = "by {0} °C in half a minute, in steps of {1} °C: {2}")
    @CsvSource({"0.155, 0.01, true", "0.17, 0.01, false", "0.26, 0.1, true", "0.28, 0.1, false", "-0.17, 0.01, false"})
    void whatMoves_doesNotStand(double byC, double steps, boolean stands) {
        stepC = steps;
        from(98, byC, LONG_S);
        assertThat(sugar.mayGo(t)).isEqualTo(stands);
    }

    @Test
    void whatBoilsThin_simmers_andIsThinForALittleLonger() {
        at(100.59, LONG_S);
        assertThat(sugar.told(Stage.ROLLING_BOIL, t)).isEqualTo(Stage.SIMMERING);
        assertThat(sugar.told(Stage.COMING_TO_THE_BOIL, t)).isEqualTo(Stage.SIMMERING);
        assertThat(sugar.told(Stage.WARMING, t)).isEqualTo(Stage.WARMING);
        assertThat(sugar.told(Stage.ROLLING_BOIL, stoodT() + 240)).isEqualTo(Stage.ROLLING_BOIL);
        at(100.74, LONG_S);
        assertThat(sugar.told(Stage.ROLLING_BOIL, t)).isEqualTo(Stage.SIMMERING);
        at(100.76, LONG_S);
        assertThat(sugar.told(Stage.ROLLING_BOIL, t)).isEqualTo(Stage.ROLLING_BOIL);
        at(100.61, LONG_S);
        assertThat(sugar.told(Stage.ROLLING_BOIL, t)).isEqualTo(Stage.ROLLING_BOIL);
    }

    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"3.9, false", "4.1, true"})
    void whatFallsFarAtOnce_getsItsSugar_andIsOnItsWay(double byC, boolean goes) {
        at(100.3, LONG_S).at(100.3 - byC, SLOT_S);
        assertThat(sugar.going()).isEqualTo(goes);
        assertThat(sugar.told(Stage.OFF_THE_HEAT, t)).isEqualTo(goes ? Stage.WARMING : Stage.OFF_THE_HEAT);
    }

    @ParameterizedTest(name = "by {0} °C in half a minute: {1}")
    @CsvSource({"-1.5, false", "-1.8, true"})
    void whatFallsSlowly_standsOffTheHeat(double byC, boolean goes) {
        at(100.3, LONG_S).goesOn(byC, LONG_S);
        assertThat(sugar.going()).isEqualTo(goes);
    }

    @ParameterizedTest(name = "from {0} to {1} °C: after {2} s")
    @CsvSource({"100.3, 101.33, 20", "100.3, 101.29, 45", "100.5, 101.01, 45"})
    void whatClimbsFarOrForLong_getsItsSugar(double fromC, double toC, int afterS) {
        at(fromC, LONG_S).at(toC, afterS - SLOT_S);
        assertThat(sugar.going()).isFalse();
        at(toC, SLOT_S);
        assertThat(sugar.going()).isTrue();
        assertThat(sugar.told(Stage.ROLLING_BOIL, t)).isEqualTo(Stage.COMING_TO_THE_BOIL);
        assertThat(sugar.told(Stage.TEST_WINDOW, t)).isEqualTo(Stage.TEST_WINDOW);
    }

    @ParameterizedTest(name = "to {0} °C: {1}")
    @CsvSource({"101.65, false", "101.75, true"})
    void aCoarseThermometer_mustShowAStepMore(double toC, boolean goes) {
        stepC = 0.5;
        at(100.3, LONG_S).at(toC, 45);
        assertThat(sugar.going()).isEqualTo(goes);
    }

    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"1.5, false", "1.7, true"})
    void aCoarseThermometer_mustShowAStepMoreOfTheNextPortion(double byC, boolean goes) {
        stepC = 0.5;
        at(100.3, LONG_S).at(102.2, 185).at(102.2 + byC, 20);
        assertThat(sugar.going()).isEqualTo(goes);
    }

    @Test
    void whatClimbsByLess_isThickened() {
        at(100.5, LONG_S).at(101, LONG_S);
        assertThat(sugar.going()).isFalse();
    }

    @Test
    void whatBeganBeforeTheReadingsBrokeOff_isForgotten() {
        at(100.3, LONG_S).at(101.5, 20);
        sugar.restart();
        assertThat(sugar.going()).isFalse();
        assertThat(sugar.mayGo(t)).isFalse();
    }

    @Test
    void itIsIn_afterAMinuteAtTheSoonest() {
        at(100.3, LONG_S).at(101.5, 75);
        assertThat(sugar.going()).isTrue();
        at(101.5, 2 * SLOT_S);
        assertThat(sugar.going()).isFalse();
        assertThat(sugar.mayGo(t)).isFalse();
    }

    @ParameterizedTest(name = "from {0} to {1} °C and on by {2} °C in half a minute: {3}")
    @CsvSource({
        "100.3, 101.5, 0.25, true",
        "100.3, 101.5, 0.28, false",
        "100.5, 101.01, 0.1, true",
        "100.5, 101.01, 0.125, false"
    })
    void itIsIn_whenItClimbsMuchMoreSlowly(double fromC, double toC, double byC, boolean in) {
        at(fromC, LONG_S).at(toC, 45).goesOn(byC, LONG_S);
        assertThat(sugar.going()).isEqualTo(!in);
    }

    @ParameterizedTest(name = "by {0} °C in half a minute: {1}")
    @CsvSource({"0.155, true", "0.175, false"})
    void itIsIn_whenItClimbsByThreeTenthsOfItsFastest(double byC, boolean in) {
        at(100.3, LONG_S).goesOn(0.5, 100).goesOn(byC, LONG_S);
        assertThat(sugar.going()).isEqualTo(!in);
    }

    @ParameterizedTest(name = "at {0} °C: {1}")
    @CsvSource({"100.29, false", "100.31, true"})
    void itIsIn_onlyAtTheBoil(double boilsC, boolean in) {
        at(100.3, LONG_S).at(95, 20).at(boilsC, LONG_S);
        assertThat(sugar.going()).isEqualTo(!in);
    }

    @Test
    void nobodyPoursForMoreThanTenMinutes() {
        at(100.3, LONG_S).at(101.5, 20).goesOn(0.4, 595);
        assertThat(sugar.going()).isTrue();
        goesOn(0.4, 3 * SLOT_S);
        assertThat(sugar.going()).isFalse();
        at(c + 2, 30); // nothing is known to have stood
        assertThat(sugar.going()).isFalse();
    }

    @Test
    void whatFell_mayTakeTwentyFiveMinutesToMelt() {
        at(100.3, LONG_S).at(95, 1495);
        assertThat(sugar.going()).isTrue();
        at(95, 3 * SLOT_S);
        assertThat(sugar.going()).isFalse();
    }

    @ParameterizedTest(name = "by {0} °C after {1} s: {2}")
    @CsvSource({"1.1, 100, true", "0.9, 100, false", "1.1, 160, false"})
    void theNextPortion_followsSoon_andTakesItFar(double byC, int afterS, boolean goes) {
        at(100.3, LONG_S).at(101.5, 85 + afterS);
        assertThat(sugar.going()).isFalse();
        at(101.5 + byC, 20);
        assertThat(sugar.going()).isEqualTo(goes);
    }

    @ParameterizedTest(name = "{0} °C for {1} s: {2}")
    @CsvSource({"101.2, 240, false", "101.2, 180, true", "101.05, 400, true"})
    void whatHasBoiledSweetForThreeMinutes_getsNoMoreSugar(double boilsC, int forS, boolean goes) {
        at(boilsC, forS).at(100.3, LONG_S).at(101.5, 20);
        assertThat(sugar.going()).isEqualTo(goes);
    }
}
