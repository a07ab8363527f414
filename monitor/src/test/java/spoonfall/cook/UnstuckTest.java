package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A reading that was called stuck and stirs again. The limits are those of {@link Unstuck}, judgements without a source. */
final class UnstuckTest {
    private static final double STOOD_C = 102;
    private static final double FREE_T = 1000;
    private static final double BOILS_S = 900;

    private final Unstuck unstuck = new Unstuck();
    private double stepC = 0.5;
    private double boilingForS = BOILS_S;

    private Signals at(double t, double c) {
        Signals at = MadeSignals.at(t, c);
        return new Signals(t, c, c, at.quick(), at.steady(), c, c, 0, stepC);
    }

    /** Called stuck for the last 60 of the seconds for which it was the same, in which the pan should have climbed so much. */
    private void stuck(double sameForS, double dueC) {
        for (double t = FREE_T - 60; t < FREE_T; t++) {
            double soFarS = sameForS - (FREE_T - 1 - t);
            unstuck.stuck(at(t, STOOD_C), soFarS, dueC * soFarS / sameForS, boilingForS);
        }
    }

    /** After how many seconds it turns out that the pan stands; -1 if it does not. */
    private int standsAfterS(DoubleUnaryOperator readC) {
        int after = -1;
        for (int s = 0; s < 900; s++) {
            if (unstuck.free(at(FREE_T + s, readC.applyAsDouble(s)))) {
                assertThat(after).isEqualTo(-1);
                after = s;
            }
        }
        return after;
    }

    /** One step lower or higher for 3 s in 20. */
    private static DoubleUnaryOperator flickers(double stepC) {
        return s -> STOOD_C + (s % 20 < 3 ? stepC : 0);
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {-0.5, 0, 0.5})
    void whatFlickersAboutWhereItStood_stands(double byC) {
        stuck(300, 2);
        assertThat(standsAfterS(flickers(byC))).isBetween(24, 26);
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {0.75, 1, 2.5})
    void whatLeapsUp_wasStuck(double byC) {
        stuck(300, 2.5);
        assertThat(standsAfterS(s -> STOOD_C + byC)).isEqualTo(-1);
    }

    /** By one step, where it should have been two or three. */
    @ParameterizedTest(name = "{0} °C due: {1}")
    @CsvSource({"1.1, false", "1.5, true"})
    void whatGoesOverToTheNextStep_climbs_ifItTakesNoLongerThanForSomeSteps(double dueC, boolean stands) {
        stuck(300, dueC);
        assertThat(standsAfterS(s -> STOOD_C + 0.5) > 0).isEqualTo(stands);
    }

    /** Two steps and nine tenths are 1.45 °C: due at once, or once so much time has passed. */
    @ParameterizedTest(name = "{0} °C due in 300 s: after {1} s")
    @CsvSource({"1.5, 25", "1.3, 35", "1.1, 95"})
    void itMustHaveStoodForAsLongAsThePanTakesForSomeSteps(double dueC, double afterS) {
        stuck(300, dueC);
        assertThat((double) standsAfterS(flickers(0.5))).isBetween(afterS - 2, afterS + 3);
    }

    @Test
    void afterTenMinutes_itIsAnotherMatter() {
        stuck(300, 0.45);
        assertThat(standsAfterS(flickers(0.5))).isEqualTo(-1);
    }

    @Test
    void whatFellMeanwhile_doesNotStand() {
        stuck(300, 2);
        assertThat(standsAfterS(s -> STOOD_C - (s < 10 ? 1.1 : 0))).isEqualTo(-1);
    }

    @Test
    void aFineThermometer_isStuckIfItDoesNotFlicker() {
        stepC = 0.1;
        stuck(300, 2);
        assertThat(standsAfterS(flickers(0.1))).isEqualTo(-1);
    }

    @ParameterizedTest(name = "boiling for {0} s: {1}")
    @CsvSource({"389, false", "451, true"})
    void thePaceMustHaveBeenKnownBeforeItStood(double forS, boolean stands) {
        boilingForS = forS;
        stuck(300, 2);
        assertThat(standsAfterS(flickers(0.5)) > 0).isEqualTo(stands);
    }

    @Test
    void whatWasForgotten_saysNothing() {
        stuck(300, 2);
        unstuck.forget();
        assertThat(standsAfterS(flickers(0.5))).isEqualTo(-1);
    }

    @Test
    void whatWasNeverStuck_doesNotStand() {
        assertThat(standsAfterS(flickers(0.5))).isEqualTo(-1);
    }
}
