package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.Quality;

final class TextLinesTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-9);
    private final TextLines oneNumber = new TextLines(Optional.empty(), Optional.empty(), false);

    private static TextLines column(String name) {
        return new TextLines(Optional.of(name), Optional.empty(), false);
    }

    private static double read(LineFormat format, String line) {
        return format.parse(line).temperatureC().orElseThrow(() -> new AssertionError("nothing read from " + line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "98.4|98.4",
                "+098.4|98.4",
                "T1: 98.42 C|98.42",
                "T1=98.42|98.42",
                "temp 98.4 °C ok|98.4",
                "209.12 F|98.4",
                "371.55K|98.4",
                "-5.5|-5.5",
                "9.84e1|98.4",
                "98.4C|98.4",
                "ch2> 98.4|98.4",
                "209.12 Fahrenheit|98.4",
                "209.12 degrees fahrenheit|98.4",
                "98.4 Celsius|98.4",
                "371.55 kelvin|98.4",
                "209.12℉|98.4",
                "98.4℃|98.4",
                "98.4 C, 45 %|98.4"
            })
    void theOnlyNumberOfALine_isItsTemperature(String line, double expectedC) {
        assertThat(read(oneNumber, line)).isEqualTo(expectedC, EXACT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "OK", "T1", "98.4 23.1", "12:30:05 98.4", "v1.2.3 ready", "0x62", "98.4.1", "RH 45 %", "45%"
            })
    void aLineWithNoNumberOrSeveral_isNotGuessedAt(String line) {
        assertThat(oneNumber.parse(line).quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @ParameterizedTest
    @CsvSource({
        "NaN,NOT_FINITE",
        "nan C,NOT_FINITE",
        "-inf,NOT_FINITE",
        "1e400,NOT_FINITE",
        "-127,OUT_OF_RANGE",
        "9999,OUT_OF_RANGE"
    })
    void whatIsNoTemperature_isNamed(String line, Quality quality) {
        assertThat(oneNumber.parse(line).quality()).isEqualTo(quality);
    }

    @Test
    void aDecimalComma_isReadWhereItIsSaid() {
        TextLines comma = new TextLines(Optional.empty(), Optional.empty(), true);
        assertThat(read(comma, "98,42 C")).isEqualTo(98.42, EXACT);
        TextLines second = new TextLines(Optional.of("2"), Optional.empty(), true);
        assertThat(read(second, "12;98,4;23,1")).isEqualTo(98.4, EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"98,4V", "45,5 %", "98,4x", "98,4.1"})
    void aPartOfANumber_isNotReadForTheWhole(String line) {
        TextLines comma = new TextLines(Optional.empty(), Optional.empty(), true);
        assertThat(comma.parse(line).quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @ParameterizedTest
    @ValueSource(strings = {"T1-5.3", "11-25", "2026-11-25", "98.4V", "98.4-2.1", "45.5 %"})
    void aNumberGluedToSomethingElse_isNotATemperature(String line) {
        assertThat(oneNumber.parse(line).quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @Test
    void aDateBeforeTheTemperature_isPassedOver() {
        assertThat(read(oneNumber, "2026-11-25 98.4")).isEqualTo(98.4, EXACT);
        assertThat(read(oneNumber, "T1 -5.3")).isEqualTo(-5.3, EXACT);
        assertThat(read(oneNumber, "-5.3e-1")).isEqualTo(-0.53, EXACT);
    }

    @Test
    void aNumberedColumn_isRead() {
        assertThat(read(column("2"), "1201,98.4,23.1")).isEqualTo(98.4, EXACT);
        assertThat(read(column("3"), "1201 98.4  23.1")).isEqualTo(23.1, EXACT);
        assertThat(column("4").parse("1201,98.4,23.1").quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @Test
    void aColumn_isNamedByItsHeading() {
        TextLines pan = column("pan");
        assertThat(pan.parse("time,pan,room").quality()).isEqualTo(Quality.NO_NUMBER);
        assertThat(read(pan, "1201,98.4,23.1")).isEqualTo(98.4, EXACT);
    }

    @Test
    void aColumn_isNamedByTheNameBeforeItsValue() {
        assertThat(read(column("T2"), "T1: 23.1 C T2: 98.4 C")).isEqualTo(98.4, EXACT);
        assertThat(read(column("t2"), "T1=23.1;T2=209.12 F")).isEqualTo(98.4, EXACT);
    }

    @Test
    void theUnitOfTheOption_winsOverTheLine() {
        TextLines fahrenheit = new TextLines(Optional.empty(), Optional.of(TemperatureUnit.F), false);
        assertThat(read(fahrenheit, "209.12")).isEqualTo(98.4, EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "0", "99999999999"})
    void aColumnThatIsNone_isNoNumberAndNoException(String name) {
        assertThat(column(name).parse("98.4,23.1").quality()).isEqualTo(Quality.NO_NUMBER);
    }
}
