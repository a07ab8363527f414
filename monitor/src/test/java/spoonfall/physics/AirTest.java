package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirTest {
    @ParameterizedTest
    @CsvSource({"0,1013.25", "500,954.61", "1000,898.75", "2000,794.95", "3000,701.09", "5000,540.20"})
    void pressure_isThatOfTheStandardAtmosphere(double metres, double hectopascals) {
        // ISO 2533 standard atmosphere, published table of pressures by geopotential altitude (from memory).
        assertThat(Air.pressurePa(metres) / 100).isEqualTo(hectopascals, Offset.offset(0.02));
        assertThat(Air.elevationM(Air.pressurePa(metres))).isEqualTo(metres, Offset.offset(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"-20000", "20000", "NaN"})
    void anElevationOutsideTheModel_isRefusedByName(double metres) {
        assertThatThrownBy(() -> Air.pressurePa(metres)).hasMessageContaining(metres + " m");
        assertThatThrownBy(() -> Air.elevationM(5000)).hasMessageContaining("5000.0 Pa");
    }
}
