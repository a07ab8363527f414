package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.Cooks;
import spoonfall.cook.KnownPan;
import spoonfall.cook.MadeCook;
import spoonfall.cook.forecast.Forecaster;

/** The set tests are called for in time though the reading has jumped away from the pan when its test window opens. */
final class ShiftedTest {
    /** The pan of {@link MadeCook#boilsC} is at 103 °C then, where its test window opens. */
    private static final double OPENS_T = 900;

    private static final int JUMPS_T = 780;
    private static final int UNTIL_S = 240;

    private static DoubleUnaryOperator lowerBy(double byC) {
        return t -> MadeCook.boilsC(t) - byC;
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {0.9, 2, 4})
    void setTests_areCalledByWhatWasKnownBefore_whileTheReadingGoesOnLower(double byC) {
        MadeCook cook = MadeCook.boiling(JUMPS_T).watch(UNTIL_S, lowerBy(byC));
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(OPENS_T - 60, OPENS_T + 60);
        assertThat(cook.alarm(AlarmName.START_SET_TESTS).act())
                .contains("dropped suddenly at {clock:7")
                .contains("by the plate alone");
    }

    @ParameterizedTest(name = "silent {0} s after the drop")
    @ValueSource(ints = {60, 75, 90})
    void aProbeThatMovedAndThenFellSilent_isCalledByWhatWasKnownBeforeItMoved(int afterS) {
        MadeCook cook = MadeCook.boiling(700).watch(afterS, lowerBy(2)).silent(600);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(OPENS_T - 75, OPENS_T + 60);
        assertThat(cook.alarm(AlarmName.START_SET_TESTS).act()).contains("dropped suddenly at {clock:6");
    }

    @Test
    void theCallIsNotRaisedTwice_whenTheReadingComesBack() {
        MadeCook cook = MadeCook.boiling(JUMPS_T).watch(UNTIL_S, lowerBy(2)).watch(120, MadeCook::boilsC);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS);
    }

    @Test
    void whatIsBackBeforeTheWindow_isCalledByItsReading() {
        MadeCook cook = MadeCook.boiling(600).watch(90, lowerBy(2)).watch(150, MadeCook::boilsC);
        assertThat(cook.raised()).isEmpty();
        cook.watch(120, MadeCook::boilsC);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS);
    }

    @Test
    void aPanThatWarmsAgain_isReadWhereItIs() {
        MadeCook cook = MadeCook.boiling(JUMPS_T)
                .watch(UNTIL_S, t -> MadeCook.boilsC(t) - 0.6 - 3 * Math.exp(-(t - JUMPS_T) / 40));
        assertThat(cook.raised()).isEmpty();
    }

    @Test
    void aPanThatFallsOn_isReadWhereItIs() {
        MadeCook cook = MadeCook.boiling(JUMPS_T).watch(UNTIL_S, t -> MadeCook.boilsC(t) - 0.8 - (t - JUMPS_T) / 60);
        assertThat(cook.raised()).doesNotContain(AlarmName.START_SET_TESTS);
    }

    @Test
    void whereTheWindowIsNotYetDue_nothingIsCalled() {
        MadeCook cook = MadeCook.boiling(600).watch(90, lowerBy(2));
        assertThat(cook.raised()).isEmpty();
    }

    /** Whether a reading is elsewhere than its pan that jumped by {@code firstC} and, a minute later, by {@code thenC}. */
    private static boolean shifts(double firstC, double thenC) {
        Forecaster known = KnownPan.watched(t -> 0, second -> {}).forecaster();
        double t = KnownPan.UNTIL_S;
        double panC = known.panC(t, Double.NaN);
        Shifted shifted = new Shifted();
        shifted.jumped(new Jumped.Shift(panC, panC + firstC, 33), t, 0.6, known);
        if (thenC != 0) {
            shifted.jumped(new Jumped.Shift(panC, panC + thenC, 33), t + 60, 0.6, known);
        }
        return shifted.sinceT(t + 80).isPresent();
    }

    @ParameterizedTest(name = "{0} °C, then {1} °C: {2}")
    @CsvSource({"-2, 0, true", "2, 0, false", "2, -2, false", "-2, 2, false", "-5.9, 0, true", "-6.1, 0, false"})
    void onlyWhatJumpsDownFirst_isElsewhere_untilItJumpsAgain(double firstC, double thenC, boolean elsewhere) {
        assertThat(shifts(firstC, thenC)).isEqualTo(elsewhere);
    }
}
