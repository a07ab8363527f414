package spoonfall.probe.modbus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RegisterSettingsTest {
    private static RegisterSettings settings(int instrument, int function, int register, double scale) {
        return new RegisterSettings(instrument, function, register, RegisterSettings.Type.INT32, false, scale);
    }

    // "MODBUS over Serial Line" 1.02, 2.2: addresses 1 to 247; functions 3 and 4 and registers by "Application
    // Protocol" 1.1b3.
    @ParameterizedTest
    @CsvSource({"1, 3, 0, 1e-9", "247, 4, 65535, 1e9", "1, 4, 1, -1e9"})
    void theEndsOfWhatTheProtocolHas_areTaken(int instrument, int function, int register, double scale) {
        assertThat(settings(instrument, function, register, scale).instrument()).isEqualTo(instrument);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 0, 1, id must be 1 to 247",
        "248, 3, 0, 1, id must be 1 to 247",
        "1, 2, 0, 1, function must be 3",
        "1, 5, 0, 1, function must be 3",
        "1, 3, -1, 1, register must be 0 to 65535",
        "1, 3, 65536, 1, register must be 0 to 65535",
        "1, 3, 0, 0, scale must be a number",
        "1, 3, 0, 1e10, scale must be a number",
        "1, 3, 0, NaN, scale must be a number"
    })
    void whatTheProtocolHasNot_isRefused(int instrument, int function, int register, double scale, String words) {
        assertThatThrownBy(() -> settings(instrument, function, register, scale))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }

    @Test
    void theSameRegister_isTheSameHoweverItIsRead() {
        RegisterSettings one = settings(1, 3, 7, 1);
        assertThat(one.sameAs(settings(1, 3, 7, 0.1))).isTrue();
        assertThat(one.sameAs(settings(2, 3, 7, 1))).isFalse();
        assertThat(one.sameAs(settings(1, 4, 7, 1))).isFalse();
        assertThat(one.sameAs(settings(1, 3, 8, 1))).isFalse();
    }

    @Test
    void aHighRegister_isAskedForWithItsHighByteFirst_andTheAnswerHasRoomForItsBytes() {
        byte[] request = Frames.request(settings(1, 3, 0x1234, 1));
        assertThat(HexFormat.of().formatHex(request, 0, 6)).isEqualTo("010312340002");
        assertThat(Frames.answerLength(settings(1, 3, 0, 1))).isEqualTo(9);
        assertThat(RegisterSettings.Type.UINT16.wireName()).isEqualTo("uint16");
    }

    @Test
    void whatIsShorterThanAnAnswer_isWaitedFor_andWhatIsAsLongIsDamaged() {
        byte[] request = Frames.request(settings(1, 3, 0, 1));
        byte[] noise = new byte[9];
        assertThat(Frames.judge(request, noise, 8)).isEqualTo(new Answer.Incomplete(true));
        assertThat(Frames.judge(request, noise, 9)).isInstanceOf(Answer.Wrong.class);
        assertThat(Frames.judge(request, request, request.length)).isEqualTo(new Answer.Incomplete(false));
    }
}
