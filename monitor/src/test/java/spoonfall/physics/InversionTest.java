package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class InversionTest {
    @ParameterizedTest
    @CsvSource({"2.8,0.052", "3.0,0.033", "3.2,0.021"})
    void rate_isVukovsAtTheSettingPoint(double ph, double perMin) {
        // Computed beforehand from Vukov's equation (from memory) by the project's science notes, which let the hot
        // syrup take a twentieth more room than the 20 °C that is reckoned with here.
        assertThat(Inversion.ratePerMin(104, 0.65, ph)).isCloseTo(perMin, Percentage.withPercentage(6));
    }

    @Test
    void rate_hasTheActivationEnergyThatWasMeasured() {
        // Tombari et al. (2007), J. Phys. Chem. B 111, 496: 109.2 kJ/mol.
        double ratio = Inversion.ratePerMin(104, 0.5, 3) / Inversion.ratePerMin(94, 0.5, 3);
        double perMol = 8.314463 * Math.log(ratio) / (1 / 367.15 - 1 / 377.15);
        assertThat(perMol / 1000).isEqualTo(109.2, Offset.offset(1.0));
    }

    @Test
    void onePhLower_isTenTimesAsFast() {
        assertThat(Inversion.ratePerMin(100, 0.5, 2) / Inversion.ratePerMin(100, 0.5, 3))
                .isCloseTo(10, Percentage.withPercentage(1e-9));
    }

    @Test
    void halfTheSucrose_isSplitAfterOneHalfLife() {
        double minutes = Math.log(2) / Inversion.ratePerMin(103, 0.6, 3.1);
        assertThat(Inversion.share(minutes, 103, 0.6, 3.1)).isEqualTo(0.5, Offset.offset(1e-12));
    }

    @Test
    void steps_addUpToTheWhole() {
        long seed = 20260118;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            double start = random.nextDouble();
            double celsius = random.nextDouble(90, 110);
            double solids = random.nextDouble(0, Syrup.MOST_SOLIDS);
            double ph = random.nextDouble(2.5, 4);
            double minutes = random.nextDouble(60);
            double part = random.nextDouble(minutes);
            double stepped = Inversion.after(
                    Inversion.after(start, part, celsius, solids, ph), minutes - part, celsius, solids, ph);
            assertThat(stepped)
                    .as("seed %d, case %d", seed, i)
                    .isEqualTo(Inversion.after(start, minutes, celsius, solids, ph), Offset.offset(1e-12))
                    .isBetween(start, 1.0);
        }
    }

    @Test
    void noTime_splitsNothing() {
        assertThat(Inversion.after(0.3, 0, 104, 0.65, 3)).isEqualTo(0.3, Offset.offset(1e-15));
        assertThat(Inversion.share(0, 104, 0.65, 3)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "-5,0.5,3,1,0",
        "200,0.5,3,1,0",
        "100,0.95,3,1,0",
        "100,0.5,9,1,0",
        "100,0.5,3,-1,0",
        "100,0.5,3,1,1.5",
        "NaN,0.5,3,1,0",
        "100,0.5,NaN,1,0",
        "100,0.5,3,Infinity,0"
    })
    void whatIsNoCook_isRefused(double celsius, double solids, double ph, double minutes, double inverted) {
        assertThatThrownBy(() -> Inversion.after(inverted, minutes, celsius, solids, ph))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
