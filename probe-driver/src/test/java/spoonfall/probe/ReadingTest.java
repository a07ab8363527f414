package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class ReadingTest {
    @Test
    void aReading_hasATemperatureExactlyWhenItIsGood() {
        assertThatThrownBy(() -> new Reading("pan", 0, OptionalDouble.empty(), "", Quality.GOOD))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Reading("pan", 0, OptionalDouble.of(98), "", Quality.NOT_TEXT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Reading.good("pan", 0, 1000, "")).hasMessageContaining("1000");
    }

    @Test
    void rawText_isShortenedAndMadePrintable() {
        Reading reading = Reading.bad("pan", 0, "\u001b[2J" + "x".repeat(5000), Quality.NOT_TEXT);
        assertThat(reading.raw()).hasSize(Reading.MAX_RAW).startsWith("·[2J").endsWith("…");
    }
}
