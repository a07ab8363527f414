package spoonfall.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The median by selection is the median by putting in order, to the last bit. */
final class SelectionTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void median_isThatOfTheSortedValues(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int count = 1; count < 300; count++) {
            int kinds = random.nextInt(1, 400); // few kinds of values: many are equal, as of a stepped thermometer
            double[] values = random.ints(count + 3L, 0, kinds)
                    .mapToDouble(kind -> kind / 7.0 - 20)
                    .toArray();
            double[] sorted = Arrays.copyOf(values, count);
            Arrays.sort(sorted);
            double expected = count % 2 == 1 ? sorted[count / 2] : (sorted[count / 2 - 1] + sorted[count / 2]) / 2;
            assertThat(Selection.median(values, count))
                    .as("seed %d, %d values", seed, count)
                    .isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 1001})
    void median_ofOrderedValues_isFound(int count) {
        double[] up = new double[count];
        double[] down = new double[count];
        for (int i = 0; i < count; i++) {
            up[i] = i;
            down[i] = count - 1 - i;
        }
        assertThat(Selection.median(up, count)).isEqualTo((count - 1) / 2.0);
        assertThat(Selection.median(down, count)).isEqualTo((count - 1) / 2.0);
    }

    /** Where the median lies just between the limits, on one of them, or outside: all its values lie on a grid, and so do they. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void median_isTheSame_whereverItIsLookedFor(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int run = 0; run < 2000; run++) {
            double[] values = random.ints(random.nextInt(1, 30), 0, random.nextInt(1, 20))
                    .asDoubleStream()
                    .toArray();
            double low = random.nextInt(-2, 20);
            double high = low + random.nextInt(10);
            double expected = Selection.median(values.clone(), values.length);
            assertThat(Selection.median(values.clone(), values.length, low, high))
                    .as("seed %d, run %d: %s within %f to %f", seed, run, Arrays.toString(values), low, high)
                    .isEqualTo(expected);
            assertThat(Selection.median(values, values.length, Double.NaN, Double.NaN))
                    .isEqualTo(expected);
        }
    }

    @Test
    void highest_isOfItsPartAlone() {
        for (int from = 0; from < 6; from++) {
            for (int to = from + 1; to <= 12; to++) {
                for (int at = from; at < to; at++) {
                    double[] values = new double[14];
                    Arrays.fill(values, -3);
                    Arrays.fill(values, 0, from, 9);
                    Arrays.fill(values, to, 14, 9);
                    values[at] = -2;
                    assertThat(Selection.highest(values, from, to)).isEqualTo(-2);
                }
            }
        }
    }
}
