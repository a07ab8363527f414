package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.probe.trace.Trace;

/** A pan that left the boil and boils again goes on as it did; one that got its sugar meanwhile does not. Tuning seeds. */
class BoilsAgainTest {
    /** What counts as in time (docs/evaluation.md). */
    private static final double IN_TIME_S = 20;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {26, 183, 244, 796, 852})
    void setTests_areCalledInTime_whenThePanHadStalledBelowTheBoil(long seed) {
        assertThat(calledAfterS(VariedCook.cook(seed))).isBetween(-IN_TIME_S, IN_TIME_S);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {2, 5, 24})
    void setTests_areCalledInTime_whenTheSugarWentInBetweenTwoBoils(long seed) {
        assertThat(calledAfterS(VariedCook.cook(CookKind.LATE_SUGAR, seed))).isBetween(-IN_TIME_S, IN_TIME_S);
    }

    /** Before, these readings were taken for those of another pan until a quarter of an hour had gone by. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {164, 166, 262, 272})
    void gelPoint_isCalled_whenThePanIsBackFromATest(long seed) {
        assertThat(gelCalledAfterS(VariedCook.cook(seed))).isBetween(-IN_TIME_S, IN_TIME_S);
    }

    @Test
    void gelPoint_isCalled_whenTheReadingIsBackFromAJump() {
        assertThat(gelCalledAfterS(VariedCook.cook(CookKind.JUMP, 185))).isBetween(-IN_TIME_S, IN_TIME_S);
    }

    private static double gelCalledAfterS(Trace trace) {
        double trueT = trace.info().firstT("gel").orElseThrow();
        return Cooks.raisedT(Replayed.events(trace), AlarmName.GEL_POINT).orElseThrow() - trueT;
    }

    private static double calledAfterS(Trace trace) {
        double trueT = trace.info().firstT("window").orElseThrow();
        return Cooks.raisedT(Replayed.events(trace), AlarmName.START_SET_TESTS).orElseThrow() - trueT;
    }
}
