package spoonfall.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantitiesTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1240m|1240", "1,240 m|1240", "4068ft|1239.9264", "1.24km|1240", "0m|0", "-430 m|-430"})
    void elevations_areRead(String text, double metres) {
        assertThat(Quantities.elevationM(text)).isEqualTo(metres, EXACT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1240|needs a unit", "high|is not understood", "1240 miles|unknown unit miles",
                        "-20000m|is not where anyone cooks",
                "1e9m|is not understood", "NaNm|is not understood", "12,40m|is not understood", "|is not understood"
            })
    void wrongElevations_areNamedWithAGoodOne(String text, String message) {
        assertThatThrownBy(() -> Quantities.elevationM(text == null ? "" : text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message)
                .hasMessageContaining("1240m or 4068ft");
    }

    @ParameterizedTest
    @CsvSource({
        "898hPa,89800",
        "898mbar,89800",
        "89.8kPa,89800",
        "89800Pa,89800",
        "26.5inHg,89739.3085",
        "673mmHg,89725.9752"
    })
    void pressures_areRead(String text, double pascals) {
        assertThat(Quantities.pressurePa(text)).isEqualTo(pascals, Offset.offset(1e-3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"898", "29 psi", "0hPa", "2000hPa"})
    void wrongPressures_areRefused(String text) {
        assertThatThrownBy(() -> Quantities.pressurePa(text)).hasMessageContaining("898hPa or 26.5inHg");
    }

    @ParameterizedTest
    @CsvSource({"8F,4.4444444", "9 F,5", "4.4C,4.4", "4.4K,4.4", "4.4 °C,4.4"})
    void differences_areRead(String text, double celsius) {
        assertThat(Quantities.differenceC(text)).isEqualTo(celsius, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"20,20", "20x,20", "0.5,0.5"})
    void factors_areRead(String text, double factor) {
        assertThat(Quantities.factor(text)).isEqualTo(factor);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "fast", "1e9", "NaN"})
    void wrongFactors_areRefused(String text) {
        assertThatThrownBy(() -> Quantities.factor(text)).hasMessageContaining("\"" + text + "\"");
    }
}
