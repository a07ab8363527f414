package spoonfall.probe.modbus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against "MODBUS over Serial Line" 1.02, 2.5.1.1: 3.5 and 1.5 characters of 11 bits; fixed above 19200 baud. */
final class LineTimingTest {
    @ParameterizedTest
    @CsvSource({
        "1200, 32.083, 13.750", // 11 bits x 3.5 / 1200 and 11 bits x 1.5 / 1200, computed by hand
        "9600, 4.010, 1.719", // 11 bits x 3.5 / 9600 and 11 bits x 1.5 / 9600, likewise
        "19200, 2.005, 0.859", // the last rate that is computed, likewise
        "19201, 1.750, 0.750", // the document's fixed values for rates greater than 19200
        "115200, 1.750, 0.750"
    })
    void theSilences_areThePublishedOnes(int baud, double betweenMillis, double withinMillis) {
        assertThat(LineTiming.betweenFramesNanos(baud) / 1e6).isCloseTo(betweenMillis, within(0.0005));
        assertThat(LineTiming.withinFrameNanos(baud) / 1e6).isCloseTo(withinMillis, within(0.0005));
    }
}
