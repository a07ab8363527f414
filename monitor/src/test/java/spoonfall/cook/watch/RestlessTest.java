package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.signal.Signals;
import spoonfall.series.RobustLine;

/** When readings count as restless: the limits are those of {@link Restless}, judgements without a source. */
final class RestlessTest {
    private final Restless restless = new Restless();

    private static Signals scattered(double t, double scatterC, double stepC) {
        RobustLine line = new RobustLine(0, 104, t, scatterC, 1e-5);
        return new Signals(t, 104, 104, Optional.of(line), Optional.of(line), 104, 104, stepC);
    }

    private void watch(int from, int to, double scatterC) {
        for (int t = from; t < to; t++) {
            restless.endSecond(scattered(t, scatterC, 0.01));
        }
    }

    @ParameterizedTest(name = "{0} °C after {1} °C, steps of {2} °C: {3}")
    @CsvSource({
        "0.17, 0.1, 0.01, true",
        "0.15, 0.1, 0.01, false",
        "0.051, 0.01, 0.01, true",
        "0.049, 0.01, 0.01, false",
        "0.17, 0.01, 0.1, true",
        "0.15, 0.01, 0.1, false"
    })
    void theyScatter_moreThanTheyDid_andThanTheirSteps(double nowC, double beforeC, double stepC, boolean expected) {
        watch(0, 300, beforeC);
        assertThat(restless.grown(scattered(300, nowC, stepC))).isEqualTo(expected);
    }

    @Test
    void whatTheyDidWithinTwoMinutes_isNotBefore() {
        watch(0, 181, 0.1);
        watch(181, 300, 1);
        assertThat(restless.grown(scattered(300, 0.17, 0.01))).isTrue();
    }

    @Test
    void whatTheyDidFiveMinutesAgo_isForgotten() {
        watch(0, 300, 0.01);
        watch(300, 600, 0.1);
        assertThat(restless.grown(scattered(599, 0.15, 0.01))).isFalse();
    }

    @Test
    void ofWhatWasNotWatchedForLong_nothingIsSaid() {
        watch(0, 100, 0.01);
        assertThat(restless.grown(scattered(100, 1, 0.01))).isFalse();
        watch(100, 300, 0.01);
        assertThat(restless.grown(scattered(300, 1, 0.01))).isTrue();
        restless.restart();
        assertThat(restless.grown(scattered(300, 1, 0.01))).isFalse();
    }
}
