package spoonfall.probe.modbus;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HexFormat;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Hearing;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.serial.Instrument;
import spoonfall.probe.serial.InstrumentRig;

final class ModbusProbeTest extends ProbeContract {
    private static final String SPEC = "modbus:%s,register=0,type=int16,scale=0.01,baud=19200";

    /** The answer of instrument 1 with a temperature in hundredths. */
    private static byte[] value(double celsius) {
        return Registers.answer(new byte[] {1, 4}, Registers.hundredths(celsius));
    }

    @Override
    protected Rig rig(List<Double> temperaturesC) {
        return new InstrumentRig(SPEC, ModbusProbeTest::value, temperaturesC);
    }

    /** Starts, lets the instrument answer once or more as told, and returns what was heard. */
    private static Hearing heard(BiFunction<Integer, byte[], byte[]> answers, int readings) {
        Hearing hearing = new Hearing();
        try (Instrument instrument = new Instrument(SPEC, answers)) {
            instrument.probe().start(hearing);
            Hearing.await("readings", () -> hearing.readings().size() >= readings);
        }
        return hearing;
    }

    @Test
    void aBrokenAnswer_isAskedForAgainAndNeverRead() {
        Hearing hearing = heard((n, request) -> n == 0 ? HexFormat.of().parseHex("0104022901ffff") : value(98.4), 1);
        assertThat(hearing.temperaturesC()).containsExactly(98.4);
        assertThat(hearing.lost()).isEmpty();
    }

    @Test
    void anAnswerThatIsBrokenTwice_isReportedOnce() {
        Hearing hearing = heard((n, request) -> Registers.damaged(value(98.4)), 2);
        assertThat(hearing.readings()).extracting(Reading::quality).containsOnly(Quality.BAD_FRAME);
        assertThat(hearing.readings().get(0).raw()).startsWith("01 04 02 26 70");
        assertThat(hearing.lost())
                .singleElement()
                .satisfies(said -> assertThat(said)
                        .contains("instrument 1 answers, but its checksum is wrong. Check its address"));
    }

    @Test
    void anInstrumentThatAnswersForAnother_isNeverRead() {
        Hearing hearing = heard((n, request) -> Registers.signed(new byte[] {2, 4, 2, 0x26, 0x70}), 1);
        assertThat(hearing.readings().get(0).quality()).isEqualTo(Quality.BAD_FRAME);
        assertThat(hearing.lost().get(0)).contains("instrument 1 does not answer, but instrument 2 does");
    }

    @Test
    void aRegisterThatDoesNotExist_isNamed() {
        Hearing hearing = heard((n, request) -> Registers.signed(new byte[] {1, (byte) 0x84, 2}), 1);
        assertThat(hearing.readings().get(0).quality()).isEqualTo(Quality.REFUSED);
        assertThat(hearing.lost().get(0)).contains("refuses register 0 (exception 2)");
    }

    @Test
    void anEchoingTwoWireLine_isReadAllTheSame() {
        Hearing hearing = heard((n, request) -> Registers.joined(request, value(98.4)), 1);
        assertThat(hearing.temperaturesC()).containsExactly(98.4);
    }

    @Test
    void silence_isNamedOnceWithWhatToCheck() {
        Hearing hearing = heard((n, request) -> new byte[0], 1);
        assertThat(hearing.readings().get(0).quality()).isEqualTo(Quality.NO_ANSWER);
        assertThat(hearing.lost()).hasSize(1);
        assertThat(hearing.lost().get(0))
                .contains("at 19200 baud 8E1: instrument 1 does not answer", "Check its address");
    }
}
