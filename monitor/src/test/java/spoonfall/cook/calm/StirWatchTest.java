package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.signal.Signals;

/** Stirs, seen as short dips. The limits are those of {@link StirWatch}, judgements without a source. */
final class StirWatchTest {
    private final StirWatch stirs = new StirWatch();
    private double t;

    /** A reading that is so much below the trend at each second; a little noise is there from the beginning. */
    private void below(int seconds, DoubleUnaryOperator belowC) {
        for (int i = 0; i < seconds; i++) {
            stirs.endSecond(at(belowC.applyAsDouble(i), 0.01));
            t++;
        }
    }

    private void below(int seconds, double belowC) {
        below(seconds, i -> belowC);
    }

    private Signals at(double belowC, double stepC) {
        // only the difference counts; from 0 °C it is exact
        return new Signals(t, 0, belowC, Optional.empty(), Optional.empty(), 0, 0, stepC);
    }

    private boolean stirred() {
        return stirs.stirredT() > Double.NEGATIVE_INFINITY;
    }

    @Test
    void aStir_isADip_andIsSeenWhenTheReadingIsHalfwayBack() {
        below(60, 0);
        below(10, 0.2);
        below(5, 0.075);
        assertThat(stirred()).isFalse();
        below(1, 0.074);
        assertThat(stirs.stirredT()).isEqualTo(75);
        below(60, 0);
        assertThat(stirs.stirredT()).isEqualTo(75);
        below(10, 0.2);
        below(1, 0);
        assertThat(stirs.stirredT()).isEqualTo(146);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"0.151, true", "0.15, false"})
    void aDip_isOfAtLeastSoMuch(double dipC, boolean seen) {
        below(60, 0);
        below(10, dipC);
        below(5, 0);
        assertThat(stirred()).isEqualTo(seen);
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"40, true", "41, false"})
    void aDip_isNoLongerThanFortySeconds(int seconds, boolean seen) {
        below(60, 0);
        below(seconds, 0.3);
        below(5, 0);
        assertThat(stirred()).isEqualTo(seen);
    }

    @Test
    void whatStaysLowForLong_isNoStir_andTheNextDipIs() {
        below(60, 0);
        below(100, 0.3);
        below(20, 0);
        assertThat(stirred()).isFalse();
        below(10, 0.3);
        below(5, 0);
        assertThat(stirs.stirredT()).isEqualTo(190);
    }

    @Test
    void inNoisyReadings_aDipMustBeDeeper() {
        // a mean deviation of 0.08 °C is a standard one of 0.1 °C, and four of those are 0.4 °C
        below(1200, i -> i % 2 == 0 ? 0.08 : -0.08);
        below(1, 0.38);
        below(5, 0);
        assertThat(stirred()).isFalse();
        below(1, 0.43);
        below(5, 0);
        assertThat(stirred()).isTrue();
    }

    @Test
    void aThermometer_showsStirsIfItIsNeitherCoarseNorNoisy() {
        below(60, 0);
        assertThat(stirs.sees(at(0, 0.15))).isTrue();
        assertThat(stirs.sees(at(0, 0.151))).isFalse();
        below(1200, i -> i % 2 == 0 ? 0.05 : -0.05);
        assertThat(stirs.sees(at(0, 0.01))).isTrue();
        below(1200, i -> i % 2 == 0 ? 0.07 : -0.07);
        assertThat(stirs.sees(at(0, 0.01))).isFalse();
    }

    @Test
    void aDipFromBeforeTheReadingsBeganAnew_isNoStir() {
        below(60, 0);
        below(10, 0.2);
        stirs.restart();
        below(5, 0);
        assertThat(stirred()).isFalse();
    }
}
