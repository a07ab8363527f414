package spoonfall.lab.varied;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SyrupCurveTest {
    private static final double SEA_LEVEL_PA = 101_325;

    private static double riseC(SyrupCurve curve, double solids, double inverted) {
        return curve.boilC(solids, inverted) - curve.waterBoilC();
    }

    @ParameterizedTest
    @CsvSource({"40,1.15,1.5", "50,1.82,2.0", "60,2.94,3.0", "62,3.25,3.4", "66,4.00,4.8", "68,4.46,5.6", "70,4.99,6.5"
    })
    void aCurve_liesBetweenStarzakAndBrowne(double percent, double starzakC, double browneC) {
        // Starzak and Peacock (1997) computed, Browne (1912) read, both in the project's science notes.
        double solids = percent / 100;
        assertThat(riseC(new SyrupCurve(SEA_LEVEL_PA, 0, 1), solids, 0)).isEqualTo(starzakC, Offset.offset(0.02));
        assertThat(riseC(new SyrupCurve(SEA_LEVEL_PA, 1, 1), solids, 0)).isEqualTo(browneC, Offset.offset(0.01));
        double halfway = (riseC(new SyrupCurve(SEA_LEVEL_PA, 0, 1), solids, 0) + browneC) / 2;
        assertThat(riseC(new SyrupCurve(SEA_LEVEL_PA, 0.5, 1), solids, 0)).isEqualTo(halfway, Offset.offset(0.01));
    }

    @ParameterizedTest
    @CsvSource({"60,0.2,1.125", "60,0.5,1.313", "65,0.35,1.205", "65,0.5,1.290", "68,0.2,1.111", "68,0.5,1.273"})
    void inversion_raisesTheRiseAsNorrishHasIt(double percent, double inverted, double times) {
        // Ratios of Norrish's rises with and without inversion in the project's science notes.
        SyrupCurve curve = new SyrupCurve(SEA_LEVEL_PA, 0.3, 1);
        double ratio = riseC(curve, percent / 100, inverted) / riseC(curve, percent / 100, 0);
        assertThat(ratio).isEqualTo(times, Offset.offset(0.02));
    }

    @Test
    void itAlwaysClimbs() {
        SyrupCurve curve = new SyrupCurve(75_000, 0.5, 1.1);
        double last = -1;
        for (double solids = 0; solids < 0.89; solids += 0.001) {
            double boilC = curve.boilC(solids, 0.2);
            assertThat(boilC).isGreaterThan(last);
            last = boilC;
        }
    }
}
