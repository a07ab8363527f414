package spoonfall.estimate.filter;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.physics.Inversion;
import spoonfall.physics.Syrup;

/** The table against what it tabulates, which PhysicsTest and its like hold to published values. */
class SyrupCurveTest {
    private static final double INVERTED = Syrup.TYPICAL_INVERTED;

    @ParameterizedTest
    @ValueSource(doubles = {60_000, 84_500, 101_325, 104_000})
    void rise_isThatOfTheSyrup_everywhere(double pressurePa) {
        SyrupCurve curve = new SyrupCurve(pressurePa);
        for (double solids = 0.05; solids <= Syrup.MOST_SOLIDS; solids += 0.00037) {
            double riseC = Syrup.riseC(pressurePa, solids, INVERTED);
            assertThat(curve.riseC(1 / solids)).isCloseTo(riseC, Offset.offset(1e-6));
            double slopeC = -Syrup.riseSlopeC(pressurePa, solids, INVERTED) * solids * solids;
            assertThat(curve.riseSlopeC(1 / solids)).isCloseTo(slopeC, Offset.offset(1e-5 * Math.abs(slopeC)));
            assertThat(curve.solidsAt(riseC)).isCloseTo(solids, Offset.offset(1e-6));
            assertThat(curve.u(riseC)).isCloseTo(1 / solids, Offset.offset(1e-4));
            assertThat(curve.riseC(curve.u(riseC))).isCloseTo(riseC, Offset.offset(1e-8));
            double perMin = Inversion.ratePerMin(Syrup.boilingPointC(pressurePa, solids, INVERTED), solids, 3.1);
            assertThat(curve.inversionPerMin(1 / solids)).isCloseTo(perMin, Offset.offset(1e-5 * perMin));
        }
    }

    @Test
    void pansUnderOnePressure_shareACurve_andOthersHaveTheirOwn() {
        SyrupCurve curve = SyrupCurve.under(90_000);
        assertThat(SyrupCurve.under(90_000)).isSameAs(curve);
        assertThat(SyrupCurve.under(101_325).riseC(2)).isEqualTo(new SyrupCurve(101_325).riseC(2));
        assertThat(SyrupCurve.under(90_000).riseC(2))
                .isEqualTo(curve.riseC(2))
                .isNotEqualTo(SyrupCurve.under(101_325).riseC(2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.4, 2, 4.5, 12})
    void solids_areThoseOfTheSyrup_atThatRise(double riseC) {
        assertThat(new SyrupCurve(90_000).solidsAt(riseC))
                .isCloseTo(Syrup.solids(90_000, riseC, INVERTED), Offset.offset(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, 0})
    void solids_areNone_whereNothingRises(double riseC) {
        SyrupCurve curve = new SyrupCurve(101_325);
        assertThat(curve.solidsAt(riseC)).isZero();
        assertThat(curve.u(riseC)).isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 1.05})
    void rise_staysThatOfTheEnd_beyondTheCurve(double u) {
        SyrupCurve curve = new SyrupCurve(101_325);
        double endC = Syrup.riseC(101_325, Syrup.MOST_SOLIDS, INVERTED);
        assertThat(curve.riseC(u)).isCloseTo(endC, Offset.offset(1e-9));
        assertThat(curve.solidsAt(endC + 5)).isEqualTo(Syrup.MOST_SOLIDS);
    }
}
