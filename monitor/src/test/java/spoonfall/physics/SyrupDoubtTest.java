package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SyrupDoubtTest {
    private static final double ATM = 101_325;

    @ParameterizedTest
    @CsvSource({
        // Browne (1912), boiling points of sucrose solutions.
        "40,1.5",
        "50,2.0",
        "60,3.0",
        "62,3.4",
        "64,4.0",
        "66,4.8",
        "68,5.6",
        "70,6.5",
        // Cruess and McNair, in Lowe, Experimental Cookery.
        "65,3.9",
        // Maple syrup of 66 %: +7.1 °F.
        "66,3.944",
        // Practical Action: 68 % boils at 105 °C, here less 99.974 °C.
        "68,5.026",
        // Starzak and Peacock (1997), computed from their formula (constants read, form from memory).
        "40,1.15",
        "50,1.82",
        "60,2.94",
        "62,3.25",
        "64,3.60",
        "65,3.79",
        "66,4.00",
        "68,4.46",
        "70,4.99"
    })
    void publishedPointsOfThePreservesRange_lieWithinTwoDoubts(double percent, double riseC) {
        double solids = percent / 100;
        assertThat(Syrup.riseC(ATM, solids, 0)).isEqualTo(riseC, Offset.offset(2 * Syrup.doubtC(ATM, solids, 0)));
    }

    @Test
    void publishedPointsOfAThickeningPreserve_useTheDoubtUp() {
        // A doubt that is never used would be too large: of the eleven measured points above, 40 to 70 %, the root
        // mean square is near one doubt.
        double[][] points = {
            {40, 1.5},
            {50, 2.0},
            {60, 3.0},
            {62, 3.4},
            {64, 4.0},
            {66, 4.8},
            {68, 5.6},
            {70, 6.5},
            {65, 3.9},
            {66, 3.944},
            {68, 5.026}
        };
        double sum = 0;
        for (double[] point : points) {
            double doubts = (Syrup.riseC(ATM, point[0] / 100, 0) - point[1]) / Syrup.doubtC(ATM, point[0] / 100, 0);
            sum += doubts * doubts;
        }
        assertThat(Math.sqrt(sum / points.length)).isBetween(0.7, 1.3);
    }

    @Test
    void doubt_growsWithTheSolids() {
        double before = 0;
        for (double solids = 0; solids <= Syrup.MOST_SOLIDS; solids += 0.01) {
            double doubtC = Syrup.doubtC(ATM, solids, 0);
            assertThat(doubtC).as("%s solids", solids).isGreaterThan(before);
            before = doubtC;
        }
    }

    @ParameterizedTest
    @CsvSource({"0.50,0.15,0.22", "0.66,0.40,0.50", "0.68,0.40,0.50", "0.70,0.5,0.6", "0.80,1,2"})
    void doubt_isOfTheSizeByWhichTablesDiffer(double solids, double fromC, double toC) {
        // Near the gel point published tables differ by about a degree, which is two doubts (docs/science.md).
        assertThat(Syrup.doubtC(ATM, solids, 0)).isBetween(fromC, toC);
    }

    @Test
    void doubtOfTheSolids_isTheDoubtOverTheSlope() {
        for (double solids = 0.05; solids < Syrup.MOST_SOLIDS; solids += 0.05) {
            assertThat(Syrup.solidsDoubt(90_000, solids, 0.2))
                    .isEqualTo(
                            Syrup.doubtC(90_000, solids, 0.2) / Syrup.riseSlopeC(90_000, solids, 0.2),
                            Offset.offset(1e-12));
        }
    }
}
