package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.probe.serial.PseudoTerminal;

/** Probes whose numbers are a sensor's own, from the line to the reading. */
final class SensorOptionsTest {
    private static Reading read(String kind, String options, String line) {
        Hearing hearing = new Hearing();
        try (PseudoTerminal port = PseudoTerminal.open();
                Probe probe =
                        ProbeSpec.parse(kind + ":" + port.path() + options).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("finding it", () -> !hearing.found().isEmpty());
            port.send("x\n" + line + "\n");
            Hearing.await("a reading", () -> !hearing.readings().isEmpty());
        }
        return hearing.readings().get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text|,sensor=pt100|R=140.4005|105",
                "text|,column=2,sensor=pt1000|1, 1385.055|100",
                "text|,column=1,sensor=k,junction=2|3.096 25.0|100",
                "text|,column=tc,sensor=t,junction=cj|tc=3.287 cj=25.0|100",
                "json|,field=mv,sensor=j,junction=cold|{\"mv\": 3.992, \"cold\": 25.0}|100",
                "text|,sensor=ntc|697.5|100",
                "text|,sensor=ntc,ohm25=10000,beta=3950,full=4095,series=10000|266.8|100",
                "text|,sensor=ntc,sha=1.129241e-3,shb=2.341077e-4,shc=8.775468e-8|10000|25"
            })
    void aSensorsOwnNumber_becomesItsTemperature(String kind, String options, String line, double celsius) {
        assertThat(read(kind, options, line).temperatureC().orElseThrow()).isEqualTo(celsius, Offset.offset(0.05));
    }

    @Test
    void anOpenSensor_isNamedAsAFault() {
        assertThat(read("text", ",sensor=pt100", "R=9999").quality()).isEqualTo(Quality.SENSOR_FAULT);
        assertThat(read("text", ",sensor=ntc,full=4095,series=10000", "4095").quality())
                .isEqualTo(Quality.SENSOR_FAULT);
        assertThat(read("text", ",column=1,sensor=k,junction=2", "4.0").quality())
                .isEqualTo(Quality.NO_NUMBER);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sensor=pt50|sensor must be pt100, pt1000, k, t, j or ntc", "sensor=k|needs its cold junction's column",
                "beta=3950|option beta needs a sensor", "sensor=ntc,beta=warm|beta must be a number",
                "sensor=ntc,full=4095|the option series is needed", "sensor=pt100,unit=F|give sensor or unit, not both",
                "sensor=ntc,sha=0.001|the option shb is needed"
            })
    void wrongSensorOptions_areNamedWithTheWayOut(String options, String message) {
        assertThatThrownBy(() -> ProbeSpec.parse("text:/dev/ttyUSB0," + options))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }
}
