package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.Quality;

final class JsonLinesTest {
    private final JsonLines temp = new JsonLines("temp", Optional.empty());

    @Test
    void aField_isRead() {
        assertThat(temp.parse("{\"temp\": 98.4, \"room\": 23}").temperatureC()).hasValue(98.4);
        assertThat(temp.parse("{\"temp\": \"98.4 C\"}").temperatureC()).hasValue(98.4);
    }

    @Test
    void aFieldWithinAnObject_isReadByItsPath() {
        JsonLines nested = new JsonLines("pan.temp", Optional.of(TemperatureUnit.K));
        assertThat(nested.parse("{\"pan\": {\"temp\": 371.55}}").temperatureC().orElseThrow())
                .isBetween(98.399, 98.401);
    }

    @Test
    void notANumber_isNamedAsSuch() {
        assertThat(temp.parse("{\"temp\": NaN}").quality()).isEqualTo(Quality.NOT_FINITE);
        assertThat(temp.parse("{\"temp\": 1e400}").quality()).isEqualTo(Quality.NOT_FINITE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "98.4",
                "[98.4]",
                "{",
                "{\"temp\": null}",
                "{\"temp\": {}}",
                "{\"other\": 98.4}",
                "{\"temp\": true}"
            })
    void anythingElse_isNoNumber(String line) {
        assertThat(temp.parse(line).quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @Test
    void aBombOfBrackets_isNoNumber() {
        assertThat(temp.parse("{\"temp\":" + "[".repeat(4000)).quality()).isEqualTo(Quality.NO_NUMBER);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"{\"temp\": 98.4, \"temp\": 23.1}", "{\"temp\": 98.4} {\"temp\": 23.1}", "{\"temp\": 98.4}x"})
    void twoAnswersInALine_areNotChosenBetween(String line) {
        assertThat(temp.parse(line).quality()).isEqualTo(Quality.NO_NUMBER);
    }
}
