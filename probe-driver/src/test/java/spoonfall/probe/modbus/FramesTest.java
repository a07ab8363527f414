package spoonfall.probe.modbus;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Frames against those that modbus.org's documents and common calculators of its checksum give. */
final class FramesTest {
    private static final RegisterSettings INPUT =
            new RegisterSettings(1, 4, 0, RegisterSettings.Type.INT16, false, 0.1);

    private static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex.replace(" ", ""));
    }

    private static Answer judge(RegisterSettings register, String hex) {
        byte[] frame = bytes(hex);
        return Frames.judge(Frames.request(register), frame, frame.length);
    }

    @Test
    void theChecksum_isCrc16Modbus() {
        // The check value of CRC-16/MODBUS over "123456789".
        assertThat(Frames.crc("123456789".getBytes(StandardCharsets.US_ASCII), 9))
                .isEqualTo(0x4b37);
        // "MODBUS over Serial Line": the message 02 07 has the checksum 41 12 on the wire.
        assertThat(Frames.crc(bytes("0207"), 2)).isEqualTo(0x1241);
    }

    @Test
    void aRequest_isThePublishedOne() {
        // The protocol's example of function 3: three registers from 0x6B, here as its frame 11 03 00 6B 00 03 | 76 87.
        assertThat(Frames.crc(bytes("1103006B0003"), 6)).isEqualTo(0x8776);
        byte[] request = Frames.request(new RegisterSettings(0x11, 3, 0x6b, RegisterSettings.Type.INT16, false, 1));
        assertThat(HexFormat.of().formatHex(request, 0, 6)).isEqualTo("1103006b0001");
        assertThat(Frames.crc(request, 8))
                .as("a frame with its checksum has the checksum 0")
                .isZero();
    }

    @Test
    void anAnswer_isRead() {
        Answer answer = judge(INPUT, "01 04 02 04 1A 3A 3B");
        assertThat(answer).isInstanceOf(Answer.Data.class);
        assertThat(INPUT.value(((Answer.Data) answer).data())).isEqualTo(105.0);
    }

    @Test
    void anException_isRead() {
        RegisterSettings coil = new RegisterSettings(1, 3, 0, RegisterSettings.Type.INT16, false, 1);
        assertThat(Frames.crc(bytes("018302"), 3)).isEqualTo(0xf1c0);
        assertThat(judge(coil, "01 83 02 C0 F1")).isEqualTo(new Answer.Refused(2));
    }

    @Test
    void anEchoOfTheRequest_isPassedOver() {
        String echo = HexFormat.of().formatHex(Frames.request(INPUT));
        assertThat(judge(INPUT, echo)).isInstanceOf(Answer.Incomplete.class);
        assertThat(judge(INPUT, echo + "010402041A3A3B")).isInstanceOf(Answer.Data.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "01 04 02 04 1A 3A 3C|checksum",
                "01 04 02 04 1B 3A 3B|checksum",
                "11 03 06 AE 41 56 52 43 40 49 AD|instrument 17 does"
            })
    void aWrongAnswer_isNamed(String hex, String why) {
        assertThat(judge(INPUT, hex))
                .isInstanceOfSatisfying(
                        Answer.Wrong.class, wrong -> assertThat(wrong.why()).contains(why));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a whole answer of another|11 03 06 AE 41 56 52 43 40 49 AD",
                "the end of another's answer|56 52 43 40 49 AD",
                "the start of another's answer|11 03 06 AE 41",
                "another's refusal|11 83 02 C1 34",
                "noise that looks like the start of a long answer|01 04 FF 00",
                "a damaged answer|01 04 02 04 1A 3A 3C"
            })
    void whatPrecedesTheAnswer_isPassedOver(String what, String before) {
        assertThat(judge(INPUT, before + "01 04 02 04 1A 3A 3B"))
                .as(what)
                .isInstanceOfSatisfying(
                        Answer.Data.class,
                        data -> assertThat(INPUT.value(data.data())).isEqualTo(105.0));
    }

    @Test
    void answersThatRunIntoEachOther_areDamagedAndNeverData() {
        // The bytes of two instruments that speak at once, one from each in turn.
        assertThat(judge(INPUT, "01 02 04 04 02 02 04 26 1A 70 3A E7 3B 14"))
                .isInstanceOfSatisfying(
                        Answer.Wrong.class, wrong -> assertThat(wrong.damaged()).isTrue());
    }

    @Test
    void aWholeFrameOfAnother_isNotDamage() {
        assertThat(judge(INPUT, "11 03 06 AE 41 56 52 43 40 49 AD").broken()).isFalse();
        assertThat(judge(INPUT, "11 03 06 AE 41 56 52 43 40 49 AD 01").broken())
                .as("but what follows it may be")
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void anAnswerAmidWhatOthersSay_isFoundOnlyWhenItIsWhole(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] request = Frames.request(INPUT);
        for (int i = 0; i < 5_000; i++) {
            byte[] heard = new byte[0];
            for (int others = random.nextInt(4); others > 0; others--) {
                byte[] data = new byte[random.nextBoolean() ? 2 : 4];
                random.nextBytes(data);
                byte[] frame = Registers.answer(new byte[] {(byte) random.nextInt(2, 248), 4}, data);
                heard = Registers.joined(heard, Arrays.copyOf(frame, random.nextInt(1, frame.length + 1)));
            }
            byte[] own = Registers.answer(request, Registers.hundredths(random.nextInt(0, 300)));
            byte[] all = Registers.joined(heard, own);
            for (int count = 0; count < all.length; count++) {
                assertThat(Frames.judge(request, all, count).settled())
                        .as("seed %d, try %d, %d bytes of %d", seed, i, count, all.length)
                        .isFalse();
            }
            assertThat(Frames.judge(request, all, all.length))
                    .as("seed %d, try %d", seed, i)
                    .isInstanceOfSatisfying(
                            Answer.Data.class, data -> assertThat(data.data()).containsExactly(own[3], own[4]));
        }
    }

    @Test
    void aCutAnswer_isWaitedFor() {
        for (String cut : new String[] {"", "01", "01 04 02 04", "01 04 02 04 1A 3A"}) {
            assertThat(judge(INPUT, cut)).isInstanceOf(Answer.Incomplete.class);
        }
    }

    @Test
    void everyType_isReadInBothOrders() {
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.INT16, false, 1).value(bytes("FFFE")))
                .isEqualTo(-2);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.UINT16, false, 1).value(bytes("FFFE")))
                .isEqualTo(65534);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.INT32, false, 0.01).value(bytes("00002904")))
                .isEqualTo(105.0);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.INT32, true, 0.01).value(bytes("29040000")))
                .isEqualTo(105.0);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.UINT32, false, 1).value(bytes("FFFFFFFF")))
                .isEqualTo(4294967295.0);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.FLOAT, false, 1).value(bytes("42D20000")))
                .isEqualTo(105.0);
        assertThat(new RegisterSettings(1, 3, 0, RegisterSettings.Type.FLOAT, true, 1).value(bytes("000042D2")))
                .isEqualTo(105.0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noiseOfAnyKind_isNeverTakenForData(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] request = Frames.request(INPUT);
        for (int i = 0; i < 100_000; i++) {
            byte[] noise = new byte[random.nextInt(40)];
            random.nextBytes(noise);
            if (noise.length > 2) {
                noise[0] = 1;
                noise[1] = 4;
                noise[2] = 2;
            }
            Answer answer = Frames.judge(request, noise, noise.length);
            boolean lucky = noise.length >= 7 && Frames.crc(noise, 7) == 0;
            assertThat(answer instanceof Answer.Data)
                    .as("seed %d, try %d", seed, i)
                    .isEqualTo(lucky);
        }
    }
}
