package spoonfall.probe.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The reference functions against the standards' tables; each within 0.02 °C, from 0 to 150 °C. */
final class SensorTest {
    private static final Offset<Double> CLOSE_C = Offset.offset(0.02);

    @ParameterizedTest
    @CsvSource({"-20,92.1599", "0,100", "100,138.5055", "105,140.4005", "110,142.2925", "200,175.8560"})
    void platinum_isThatOfIec60751(double celsius, double ohm) {
        // IEC 60751, reference resistances of a Pt100.
        assertThat(new Platinum(100).ohm(celsius)).isEqualTo(ohm, Offset.offset(1e-4));
        assertThat(new Platinum(100).temperatureC(ohm).orElseThrow()).isEqualTo(celsius, Offset.offset(5e-4));
        assertThat(new Platinum(1000).temperatureC(10 * ohm).orElseThrow()).isEqualTo(celsius, Offset.offset(5e-4));
    }

    @Test
    void platinum_isReadBetweenItsTableValues() {
        // 108.5 ohm = 21.8189 °C, by the inverse of IEC 60751 in the project's science notes.
        assertThat(new Platinum(100).temperatureC(108.5).orElseThrow()).isEqualTo(21.8189, Offset.offset(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "K,25,1.000", "K,50,2.023", "K,100,4.096", "K,105,4.303", "K,110,4.509", "K,150,6.138",
        "T,25,0.992", "T,50,2.036", "T,100,4.279", "T,105,4.513", "T,110,4.750", "T,150,6.704",
        "J,25,1.277", "J,50,2.585", "J,100,5.269", "J,105,5.541", "J,110,5.814", "J,150,8.010"
    })
    void thermocouples_areThoseOfIec60584(Thermocouple couple, double celsius, double millivolts) {
        // IEC 60584-1 / NIST ITS-90 tables, given to 1 µV, which is 0.025 °C of a type K: half of that is rounding.
        assertThat(couple.millivolts(celsius)).isEqualTo(millivolts, Offset.offset(0.00051));
        assertThat(couple.temperatureC(couple.millivolts(celsius), 0).orElseThrow())
                .isEqualTo(celsius, CLOSE_C);
    }

    @ParameterizedTest
    @EnumSource(Thermocouple.class)
    void aColdJunction_isTakenInByItsVoltage(Thermocouple couple) {
        for (double cold = 0; cold < 60; cold += 7.3) {
            double measured = couple.millivolts(104.4) - couple.millivolts(cold);
            assertThat(couple.temperatureC(measured, cold).orElseThrow()).isEqualTo(104.4, Offset.offset(1e-6));
        }
        assertThat(couple.millivolts(0)).isEqualTo(0, Offset.offset(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0,33621", "25,10000", "50,3588", "100,697.5", "105,606.4", "110,529.1"})
    void aThermistorByBeta_isThatOfTheFormula(double celsius, double ohm) {
        // 10 kΩ at 25 °C with a beta of 3950 K, computed beforehand by the project's science notes.
        assertThat(Thermistor.ofBeta(10_000, 3950).temperatureC(ohm).orElseThrow())
                .isEqualTo(celsius, CLOSE_C);
    }

    @ParameterizedTest
    @CsvSource({"32650,0.000", "10000,25.000"})
    void aThermistorBySteinhartAndHart_goesThroughItsPoints(double ohm, double celsius) {
        Thermistor thermistor = new Thermistor(1.129241e-3, 2.341077e-4, 8.775468e-8);
        assertThat(thermistor.temperatureC(ohm).orElseThrow()).isEqualTo(celsius, Offset.offset(1e-3));
    }

    @Test
    void counts_becomeOhms() {
        assertThat(Thermistor.ohm(2047.5, 4095, 10_000).orElseThrow()).isEqualTo(10_000, Offset.offset(1e-6));
        assertThat(Thermistor.ohm(4095, 4095, 10_000)).isEmpty();
        assertThat(Thermistor.ohm(0, 4095, 10_000)).isEmpty();
    }

    @Test
    void openAndShortedSensors_haveNoTemperature() {
        assertThat(new Platinum(100).temperatureC(1e6)).isEmpty();
        assertThat(new Platinum(100).temperatureC(0)).isEmpty();
        assertThat(new Platinum(100).temperatureC(Double.NaN)).isEmpty();
        assertThat(Thermocouple.K.temperatureC(300, 25)).isEmpty();
        assertThat(Thermocouple.K.temperatureC(4, Double.NaN)).isEmpty();
        assertThat(Thermistor.ofBeta(10_000, 3950).temperatureC(0)).isEmpty();
        assertThat(Thermistor.ofBeta(10_000, 3950).temperatureC(1e9)).isEmpty();
    }

    @Test
    void sensorsThatCannotBe_areRefused() {
        assertThatThrownBy(() -> new Platinum(0)).hasMessageContaining("ohm at 0 °C");
        assertThatThrownBy(() -> Thermistor.ofBeta(10_000, 5)).hasMessageContaining("beta");
        assertThatThrownBy(() -> new Thermistor(1e-3, -1, 0)).hasMessageContaining("b -1.0");
    }
}
