package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class RobustLineTest {
    private static final double EXACT = 1e-12;

    @Test
    void aStraightLine_isFoundExactly_whereverItIsAskedFor() {
        double[] x = {10, 20, 35, 40, 70};
        double[] y = Arrays.stream(x).map(one -> 3 + 0.5 * one).toArray();
        RobustLine line = RobustLine.through(x, y, 0, x.length, 100).orElseThrow();
        assertThat(line.slope()).isCloseTo(0.5, within(EXACT));
        assertThat(line.endX()).isEqualTo(100);
        assertThat(line.atEnd()).isCloseTo(53, within(1e-9));
        assertThat(line.scatter()).isCloseTo(0, within(1e-9));
    }

    /** Up to 29 % of the points may be anything (Rousseeuw and Leroy, Robust Regression, 1987, section 3.4, from memory). */
    @Test
    void twoWildPointsOfEight_moveItLittle() {
        double[] x = IntStream.range(0, 8).asDoubleStream().toArray();
        double[] y = Arrays.stream(x).map(one -> 2 * one).toArray();
        y[2] = 90;
        y[6] = -80;
        RobustLine line = RobustLine.through(x, y, 0, 8, 7).orElseThrow();
        assertThat(line.slope()).isCloseTo(2, within(0.5));
        assertThat(line.atEnd()).isCloseTo(14, within(2.0));
    }

    /** By hand: residuals about the line y = x are 0, 0.3, -0.3, 0.1 and -0.1, their median deviation 0.1. */
    @Test
    void scatterAndTheSlopesError_areThoseOfTheTextbook() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 1.3, 1.7, 3.1, 3.9};
        RobustLine line = RobustLine.through(x, y, 0, 5, 4).orElseThrow();
        double[] slopes = IntStream.range(0, 5)
                .boxed()
                .flatMap(i -> IntStream.range(i + 1, 5).mapToObj(j -> (y[j] - y[i]) / (x[j] - x[i])))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        double slope = (slopes[4] + slopes[5]) / 2;
        assertThat(line.slope()).isCloseTo(slope, within(EXACT));
        double[] heights = IntStream.range(0, 5)
                .mapToDouble(i -> y[i] - slope * (x[i] - 4))
                .sorted()
                .toArray();
        assertThat(line.atEnd()).isCloseTo(heights[2], within(EXACT));
        double[] off = Arrays.stream(heights)
                .map(one -> Math.abs(one - heights[2]))
                .sorted()
                .toArray();
        assertThat(line.scatter()).isCloseTo(1.4826 * off[2], within(EXACT));
        // sum of squares of x about its mean: 4 + 1 + 0 + 1 + 4
        assertThat(line.slopeError()).isCloseTo(line.scatter() / Math.sqrt(10), within(EXACT));
    }

    @Test
    void onlyThePointsOfItsPart_count_andTwoOrOneMomentAreNoLine() {
        double[] x = {0, 1, 2, 3, 4, 5};
        double[] y = {50, 1, 2, 3, 4, -50};
        assertThat(RobustLine.through(x, y, 1, 5, 4).orElseThrow().slope()).isCloseTo(1, within(EXACT));
        assertThat(RobustLine.through(x, y, 1, 4, 4)).isPresent();
        assertThat(RobustLine.through(x, y, 1, 3, 4)).isEmpty();
        assertThat(RobustLine.through(new double[] {7, 7, 7}, new double[] {1, 2, 3}, 0, 3, 7))
                .isEmpty();
    }
}
