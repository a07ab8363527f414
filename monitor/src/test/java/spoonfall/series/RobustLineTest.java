package spoonfall.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class RobustLineTest {
    private static final double EXACT = 1e-12;

    private static Optional<RobustLine> line(double[] x, double[] y, int from, int to, double endX) {
        return RobustLine.through(x, y, from, to, endX, Optional.empty(), new PairSlopes(), 0);
    }

    /** Whether what is known of such a line is true, a little off, or of quite another one. */
    @Test
    void theLine_isTheSame_whateverIsLikely() {
        SplittableRandom random = new SplittableRandom(7);
        double[] x = IntStream.range(0, 25).mapToDouble(i -> 5 * i).toArray();
        for (int run = 0; run < 200; run++) {
            double[] y = Arrays.stream(x)
                    .map(one -> 0.002 * one + Math.round(random.nextGaussian()) / 10.0)
                    .toArray();
            Optional<RobustLine> plain = line(x, y, 0, 25, 120);
            RobustLine exact = plain.orElseThrow();
            for (double offBy : new double[] {0, 0.3, -0.6, 5, -1000, Double.NaN}) {
                RobustLine near =
                        new RobustLine(exact.slope() + offBy * exact.slopeError(), 0, 120, 0.1, exact.slopeError());
                assertThat(RobustLine.through(x, y, 0, 25, 120, Optional.of(near), new PairSlopes(), 0))
                        .as("run %d, off by %f", run, offBy)
                        .isEqualTo(plain);
            }
        }
    }

    @Test
    void aStraightLine_isFoundExactly_whereverItIsAskedFor() {
        double[] x = {10, 20, 35, 40, 70};
        double[] y = Arrays.stream(x).map(one -> 3 + 0.5 * one).toArray();
        RobustLine line = line(x, y, 0, x.length, 100).orElseThrow();
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
        RobustLine line = line(x, y, 0, 8, 7).orElseThrow();
        assertThat(line.slope()).isCloseTo(2, within(0.5));
        assertThat(line.atEnd()).isCloseTo(14, within(2.0));
    }

    /** By hand: residuals about the line y = x are 0, 0.3, -0.3, 0.1 and -0.1, their median deviation 0.1. */
    @Test
    void scatterAndTheSlopesError_areThoseOfTheTextbook() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 1.3, 1.7, 3.1, 3.9};
        RobustLine line = line(x, y, 0, 5, 4).orElseThrow();
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
        double[] laterX = Arrays.stream(x).map(one -> one + 100).toArray();
        assertThat(line(laterX, y, 0, 5, 104).orElseThrow().slopeError()).isCloseTo(line.slopeError(), within(EXACT));
    }

    @Test
    void onlyThePointsOfItsPart_count_andTwoOrOneMomentAreNoLine() {
        double[] x = {0, 1, 2, 3, 4, 5};
        double[] y = {50, 1, 2, 3, 4, -50};
        assertThat(line(x, y, 1, 5, 4).orElseThrow().slope()).isCloseTo(1, within(EXACT));
        assertThat(line(x, y, 1, 4, 4)).isPresent();
        assertThat(line(x, y, 1, 3, 4)).isEmpty();
        assertThat(line(new double[] {7, 7, 7}, new double[] {1, 2, 3}, 0, 3, 7))
                .isEmpty();
    }
}
