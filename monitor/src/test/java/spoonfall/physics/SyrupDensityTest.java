package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SyrupDensityTest {
    @ParameterizedTest
    @CsvSource({
        "0,0.9982",
        "5,1.0178",
        "10,1.0381",
        "15,1.0592",
        "20,1.0810",
        "26,1.1082",
        "30,1.1270",
        "36,1.1562",
        "40,1.1765",
        "46,1.2079",
        "50,1.2295",
        "56,1.2632",
        "60,1.2864",
        "64,1.3103",
        "66,1.3224",
        "68,1.3348",
        "70,1.3472",
        "74,1.3726",
        "78,1.3986",
        "84,1.4383"
    })
    void density_isThatOfTheHandbook(double percent, double kgPerL) {
        // CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions: sucrose, at 20 °C.
        assertThat(SyrupDensity.kgPerL(percent / 100)).isEqualTo(kgPerL, Offset.offset(0.0005));
    }

    @Test
    void waterInALitre_isWhatTheSugarLeaves() {
        // CRC Handbook, the same table: 771.9 g of sucrose in a litre at 60 %, 1286.4 g in all.
        assertThat(SyrupDensity.waterKgPerL(0.6)).isEqualTo(1.2864 - 0.7719, Offset.offset(0.0005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.91, Double.NaN})
    void whatIsNoSyrup_isRefused(double solids) {
        assertThatThrownBy(() -> SyrupDensity.kgPerL(solids)).hasMessageContaining(String.valueOf(solids));
    }
}
