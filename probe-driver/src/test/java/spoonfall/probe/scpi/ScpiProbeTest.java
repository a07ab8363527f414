package spoonfall.probe.scpi;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Hearing;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.serial.Instrument;
import spoonfall.probe.serial.InstrumentRig;

final class ScpiProbeTest extends ProbeContract {
    private static final String SPEC = "scpi:%s";

    private static byte[] line(String text) {
        return (text + "\r\n").getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    protected Rig rig(List<Double> temperaturesC) {
        return new InstrumentRig(SPEC, c -> line(String.format(Locale.ROOT, "%+.8E", c)), temperaturesC);
    }

    private static Hearing heard(String spec, String answer) {
        Hearing hearing = new Hearing();
        try (Instrument instrument =
                new Instrument(spec, (n, request) -> answer.isEmpty() ? new byte[0] : line(answer))) {
            instrument.probe().start(hearing);
            Hearing.await("a reading", () -> !hearing.readings().isEmpty());
        }
        return hearing;
    }

    @Test
    void aNumberAsScpiWritesIt_isRead() {
        // SCPI-99 number format NR3, as instruments answer MEASure:TEMPerature?.
        assertThat(heard(SPEC, "+1.04520000E+02").temperaturesC()).containsExactly(104.52);
        assertThat(heard("scpi:%s,unit=F", "+2.12000000E+02").temperaturesC()).containsExactly(100.0);
        assertThat(heard("scpi:%s,column=2", "+2.30000000E+01,+1.04520000E+02").temperaturesC())
                .containsExactly(104.52);
    }

    @Test
    void anOverload_isASensorsFaultAndNoTemperature() {
        Reading reading = heard(SPEC, "+9.90000000E+37").readings().get(0);
        assertThat(reading.quality()).isEqualTo(Quality.SENSOR_FAULT);
        assertThat(reading.temperatureC()).isEmpty();
    }

    @Test
    void theQueryThatIsGiven_isAsked() {
        AtomicReference<String> asked = new AtomicReference<>("");
        Hearing hearing = new Hearing();
        try (Instrument instrument = new Instrument(
                "scpi:%s,ask=FETCh?",
                (n, request) -> {
                    asked.set(new String(request, StandardCharsets.US_ASCII));
                    return line("98.4");
                })) {
            instrument.probe().start(hearing);
            Hearing.await("a reading", () -> !hearing.readings().isEmpty());
        }
        assertThat(asked.get()).isEqualTo("FETCh?\n");
    }

    @Test
    void silenceAndErrors_areNamedOnce() {
        Hearing silent = heard(SPEC, "");
        assertThat(silent.readings().get(0).quality()).isEqualTo(Quality.NO_ANSWER);
        assertThat(silent.lost().get(0)).contains("does not answer MEASure:TEMPerature?");
        Hearing wrong = heard(SPEC, "ERR syntax");
        assertThat(wrong.readings().get(0).quality()).isEqualTo(Quality.NO_NUMBER);
        assertThat(wrong.lost().get(0)).contains("answers \"ERR syntax\", which is no temperature");
    }
}
