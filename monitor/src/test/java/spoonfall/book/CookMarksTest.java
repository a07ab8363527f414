package spoonfall.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

final class CookMarksTest {
    /** A pan at one reading in {@code everyS}. */
    private static RiseLine line(double untilS, double everyS, DoubleUnaryOperator riseC) {
        double[] times = new double[(int) (untilS / everyS) + 1];
        Arrays.setAll(times, i -> i * everyS);
        return new RiseLine(times, Arrays.stream(times).map(riseC).toArray());
    }

    /** It simmers, takes cold sugar at 600 s, boils from 1200 s and climbs to 4.6 °C at 2400 s, when the heat goes off. */
    private static double pan(double t) {
        if (t < 600) {
            return -2;
        }
        if (t < 1200) {
            return -20 + 20 * (t - 600) / 600;
        }
        return t <= 2400 ? 4.6 * (t - 1200) / 1200 : 4.6 - (t - 2400) / 30;
    }

    @Test
    void marks_areTheMomentsOfThePan() {
        CookMarks marks =
                CookMarks.of(line(2700, 1, CookMarksTest::pan), OptionalDouble.of(1210), OptionalDouble.of(2460), 4.4);
        assertThat(marks.sugarS()).isCloseTo(600, within(15.0));
        assertThat(marks.gelS().orElseThrow()).isCloseTo(1200 + 1200 * 4.3 / 4.6, within(15.0));
        assertThat(marks.finalRiseC().orElseThrow()).isCloseTo(4.6, within(0.15));
        assertThat(marks.boilMinutes().orElseThrow()).isCloseTo((2460 - 1210) / 60.0, within(1e-9));
    }

    @Test
    void aSplashAndAStir_areNoFinalRiseAndNoSugar() {
        DoubleUnaryOperator disturbed = t -> t > 1500 && t < 1506 ? 9 : t > 1800 && t < 1815 ? pan(t) - 8 : pan(t);
        CookMarks marks = CookMarks.of(line(2700, 1, disturbed), OptionalDouble.of(1210), OptionalDouble.of(2460), 4.4);
        assertThat(marks.finalRiseC().orElseThrow()).isCloseTo(4.6, within(0.15));
        assertThat(marks.sugarS()).isCloseTo(600, within(15.0));
    }

    /** Peel boils for five minutes before its sugar: the record's first rolling boil is then long before it. */
    @Test
    void peelThatBoilsFirst_isNotTheSugar() {
        DoubleUnaryOperator peelBoils = t -> t < 300 ? -2 : t < 600 ? 0 : pan(t);
        CookMarks marks = CookMarks.of(line(2700, 1, peelBoils), OptionalDouble.of(310), OptionalDouble.of(2460), 4.4);
        assertThat(marks.sugarS()).isCloseTo(600, within(15.0));
    }

    @Test
    void readingsByHand_giveTheSameMarks_coarser() {
        CookMarks marks = CookMarks.of(
                line(2700, 120, CookMarksTest::pan), OptionalDouble.of(1210), OptionalDouble.of(2460), 4.4);
        assertThat(marks.finalRiseC().orElseThrow()).isCloseTo(4.6, within(0.3));
    }

    @Test
    void aPanThatNeverBoiled_hasNoMinutesAndNoGelPoint() {
        CookMarks marks = CookMarks.of(line(300, 1, t -> -30), OptionalDouble.empty(), OptionalDouble.empty(), 4.4);
        assertThat(marks.boilMinutes()).isEmpty();
        assertThat(marks.gelS()).isEmpty();
        assertThat(CookMarks.of(
                                new RiseLine(new double[0], new double[0]),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                4)
                        .finalRiseC())
                .isEmpty();
    }

    @Test
    void aThinnedLine_keepsPeaksAndGaps() {
        RiseLine whole = line(7200, 1, t -> t == 3333 ? 9 : t / 2000);
        double[] times = whole.times().clone();
        for (int i = 5000; i < times.length; i++) {
            times[i] += 900;
        }
        List<RiseLine.Point> drawn = new RiseLine(times, whole.risesC()).thinned(500);
        assertThat(drawn).hasSizeBetween(300, 520);
        assertThat(drawn).filteredOn(point -> point.riseC().isEmpty()).hasSize(1);
        assertThat(drawn).extracting(point -> point.riseC().orElse(0)).contains(9.0);
        assertThat(drawn).isSortedAccordingTo((a, b) -> Double.compare(a.t(), b.t()));
    }

    @Test
    void readingsByHand_areNotFullOfGaps() {
        assertThat(line(3600, 240, t -> t).thinned(1000))
                .allMatch(point -> point.riseC().isPresent());
    }

    @Test
    void whatCannotBe_isSaidWithWhatCan() {
        assertThatThrownBy(() -> Firmness.named("hard")).hasMessageContaining("runny, soft, right, firm, stiff");
        assertThatThrownBy(() -> new Made("x".repeat(41), java.util.OptionalInt.empty()))
                .hasMessageContaining("at most 40");
        assertThatThrownBy(() -> new Made("a\u202eb", java.util.OptionalInt.empty()))
                .hasMessageContaining("U+202E");
        assertThatThrownBy(() -> new Made("", java.util.OptionalInt.of(-1))).hasMessageContaining("0 to 999");
    }
}
