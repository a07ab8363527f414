package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SyrupTest {
    private static final double ATM = 101_325;

    @ParameterizedTest
    @CsvSource({
        "40,1.18",
        "50,1.90",
        "60,3.13",
        "62,3.48",
        "64,3.88",
        "65,4.10",
        "66,4.34",
        "68,4.88",
        "70,5.51",
        "75,7.65",
        "80,11.21"
    })
    void rise_isNorrishsOnIf97(double percent, double riseC) {
        // Computed beforehand from Norrish's equation on IF97 by the project's science notes.
        assertThat(Syrup.riseC(ATM, percent / 100, 0)).isEqualTo(riseC, Offset.offset(0.006));
    }

    @ParameterizedTest
    @CsvSource({
        "60,0.2,3.52",
        "60,0.35,3.82",
        "60,0.5,4.11",
        "65,0.2,4.58",
        "65,0.35,4.94",
        "65,0.5,5.29",
        "68,0.2,5.42",
        "68,0.35,5.82",
        "68,0.5,6.21"
    })
    void inversion_raisesTheRise(double percent, double inverted, double riseC) {
        // As above, with part of the sugar as glucose and fructose.
        assertThat(Syrup.riseC(ATM, percent / 100, inverted)).isEqualTo(riseC, Offset.offset(0.006));
    }

    @ParameterizedTest
    @CsvSource({
        "40,1.5,0.5",
        "50,2.0,0.5",
        "60,3.0,0.5",
        "62,3.4,0.5",
        "64,4.0,0.5",
        "66,4.8,0.5",
        "68,5.6,1.05",
        "70,6.5,1.05",
        "80,12.0,1.05"
    })
    void rise_liesNearBrownesTable(double percent, double riseC, double doubtC) {
        // Browne (1912), boiling points of sucrose solutions. Published tables differ by a degree from 66 % on.
        assertThat(Syrup.riseC(ATM, percent / 100, 0)).isEqualTo(riseC, Offset.offset(doubtC));
    }

    @ParameterizedTest
    @CsvSource({"66,3.94", "68,5.03"})
    void rise_liesNearPublishedSyrups(double percent, double riseC) {
        // Maple syrup of 66 %: +7.1 °F. A syrup of 68 % boils at 105 °C (Practical Action), here less 99.97 °C.
        assertThat(Syrup.riseC(ATM, percent / 100, 0)).isEqualTo(riseC, Offset.offset(0.5));
    }

    @ParameterizedTest
    @CsvSource({"80,230,234", "85,234,241", "87,244,248"})
    void boilingPoint_liesNearThePublishedSugarStages(double percent, double fromF, double toF) {
        // Thread, soft ball and firm ball with their sugar. Far above a preserve: Norrish gives up to 4 °F more there.
        double fahrenheit = Syrup.boilingPointC(ATM, percent / 100, 0) * 1.8 + 32;
        assertThat(fahrenheit).isBetween(fromF, toF + 4);
    }

    @Test
    void theKitchensRuleAndTheTradesRule_areOneFact() {
        // 8 °F above boiling water (NCHFP) is "65 % soluble solids" (21 CFR 150.140), within what inversion moves it.
        assertThat(Syrup.solids(ATM, GelPoint.DEFAULT_RISE_C, 0)).isBetween(0.655, 0.67);
        assertThat(Syrup.solids(ATM, GelPoint.DEFAULT_RISE_C, 0.2)).isBetween(0.64, 0.65);
    }

    @Test
    void sixtyFivePercent_boilsNearThePublishedRise() {
        // 65 %: +3.9 °C (Cruess and McNair, in Lowe, Experimental Cookery).
        assertThat(Syrup.riseC(ATM, 0.65, 0)).isEqualTo(3.9, Offset.offset(0.25));
    }

    @Test
    void rise_dependsLittleOnPressure() {
        assertThat(Syrup.riseC(69_700, 0.65, 0)).isEqualTo(3.85, Offset.offset(0.006));
    }

    @Test
    void solids_undoRise() {
        long seed = 20260117;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 5000; i++) {
            double solids = random.nextDouble(0.001, Syrup.MOST_SOLIDS);
            double inverted = random.nextDouble();
            double pressurePa = random.nextDouble(45_000, 108_500);
            double riseC = Syrup.riseC(pressurePa, solids, inverted);
            assertThat(Syrup.solids(pressurePa, riseC, inverted))
                    .as("seed %d: %s solids, %s inverted, %s Pa", seed, solids, inverted, pressurePa)
                    .isEqualTo(solids, Offset.offset(1e-8));
        }
    }

    @Test
    void riseSlopes_areTheRisesOwn() {
        // Against central differences, over every kitchen and syrup.
        long seed = 20260119;
        SplittableRandom random = new SplittableRandom(seed);
        double step = 1e-5;
        for (int i = 0; i < 5000; i++) {
            double solids = random.nextDouble(step, Syrup.MOST_SOLIDS - step);
            double inverted = random.nextDouble(step, 1 - step);
            double pressurePa = random.nextDouble(45_000, 108_500);
            double bySolids = (Syrup.riseC(pressurePa, solids + step, inverted)
                            - Syrup.riseC(pressurePa, solids - step, inverted))
                    / (2 * step);
            double byInverted = (Syrup.riseC(pressurePa, solids, inverted + step)
                            - Syrup.riseC(pressurePa, solids, inverted - step))
                    / (2 * step);
            String where = "seed " + seed + ": " + solids + " solids, " + inverted + " inverted, " + pressurePa + " Pa";
            assertThat(Syrup.riseSlopeC(pressurePa, solids, inverted))
                    .as(where)
                    .isCloseTo(bySolids, Offset.offset(1e-5 * bySolids + 1e-7));
            assertThat(Syrup.riseByInvertedC(pressurePa, solids, inverted))
                    .as(where)
                    .isCloseTo(byInverted, Offset.offset(1e-5 * byInverted + 1e-6));
        }
    }

    @Test
    void riseSlopes_reachTheEndsOfTheCurve() {
        assertThat(Syrup.riseSlopeC(ATM, 0, 0)).isPositive();
        assertThat(Syrup.riseSlopeC(ATM, Syrup.MOST_SOLIDS, 1)).isPositive();
        assertThat(Syrup.riseByInvertedC(ATM, 0, 0.5)).isZero();
    }

    @Test
    void outsideTheCurve_solidsEndAtItsEnds() {
        assertThat(Syrup.solids(ATM, -3, 0)).isZero();
        assertThat(Syrup.solids(ATM, 80, 0)).isEqualTo(Syrup.MOST_SOLIDS);
    }

    @ParameterizedTest
    @CsvSource({"-0.1,0", "0.95,0", "NaN,0", "0.5,-1", "0.5,2"})
    void whatIsNoSyrup_isRefused(double solids, double inverted) {
        assertThatThrownBy(() -> Syrup.riseC(ATM, solids, inverted)).isInstanceOf(IllegalArgumentException.class);
    }
}
