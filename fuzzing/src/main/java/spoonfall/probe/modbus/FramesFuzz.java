package spoonfall.probe.modbus;

import java.util.Arrays;
import spoonfall.fuzz.Cut;
import spoonfall.fuzz.Must;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.TemperatureUnit;

/** Modbus RTU frames: what is taken for an answer is one, by a checksum worked out in another way. */
public final class FramesFuzz {
    private FramesFuzz() {}

    /** A question by the first bytes, and the rest as what comes back. */
    public static void frames(byte[] input) {
        Cut cut = new Cut(input);
        RegisterSettings register = new RegisterSettings(
                1 + cut.next() % 247,
                3 + cut.next() % 2,
                cut.nextTwo(),
                cut.oneOf(RegisterSettings.Type.values()),
                cut.next() % 2 == 1,
                cut.oneOf(1.0, 0.1, -1e9, 1e-9));
        TemperatureUnit unit = cut.oneOf(TemperatureUnit.values());
        boolean mended = cut.next() % 2 == 1;
        byte[] heard = mended ? withChecksum(cut.rest()) : cut.rest();
        byte[] request = Frames.request(register);
        Must.hold(table(request, request.length) == 0, "a request whose checksum is wrong");
        sound(register, unit, request, heard, 0);
        sound(register, unit, request, heard, heard.length / 2);
        sound(register, unit, request, heard, Math.max(0, heard.length - 1));
        sound(register, unit, request, heard, heard.length);
        answered(register, request, heard);
    }

    private static void sound(
            RegisterSettings register, TemperatureUnit unit, byte[] request, byte[] heard, int count) {
        Answer answer = Frames.judge(request, heard, count);
        Must.hold(!(answer.settled() && answer.broken()), "settled and broken at once");
        if (answer instanceof Answer.Data data) {
            Must.hold(data.data().length == 2 * register.type().registers(), "another number of registers");
            byte[] frame = frame(register, register.function(), data.data(), true);
            Must.hold(contains(heard, count, frame), "data that nobody sent");
            double temperatureC = unit.toC(register.value(data.data()));
            Must.hold(
                    Reading.qualityOf(temperatureC) != Quality.GOOD || Math.abs(temperatureC) <= Reading.HIGHEST_C,
                    "a good temperature of " + temperatureC);
        } else if (answer instanceof Answer.Refused refused) {
            byte[] code = {(byte) refused.code()};
            byte[] frame = frame(register, register.function() | 0x80, code, false);
            Must.hold(contains(heard, count, frame), "a refusal that nobody sent");
        } else if (answer instanceof Answer.Wrong wrong) {
            Must.beOneLine(wrong.why());
        }
        if (count == 0) {
            Must.hold(!answer.settled() && !answer.broken(), "an answer out of nothing");
        }
    }

    /** Whatever was on the line before, an answer that comes whole behind the echo is heard, with its own data. */
    private static void answered(RegisterSettings register, byte[] request, byte[] data) {
        byte[] own = Arrays.copyOf(data, 2 * register.type().registers());
        byte[] frame = frame(register, register.function(), own, true);
        byte[] echoed = Arrays.copyOf(request, request.length + frame.length);
        System.arraycopy(frame, 0, echoed, request.length, frame.length);
        Answer answer = Frames.judge(request, echoed, echoed.length);
        Must.hold(
                answer instanceof Answer.Data heard && Arrays.equals(heard.data(), own),
                "an answer behind its echo is not heard");
    }

    private static byte[] frame(RegisterSettings register, int function, byte[] data, boolean counted) {
        byte[] frame = new byte[data.length + (counted ? 5 : 4)];
        frame[0] = (byte) register.instrument();
        frame[1] = (byte) function;
        if (counted) {
            frame[2] = (byte) data.length;
        }
        System.arraycopy(data, 0, frame, counted ? 3 : 2, data.length);
        int crc = table(frame, frame.length - 2);
        frame[frame.length - 2] = (byte) crc;
        frame[frame.length - 1] = (byte) (crc >> 8);
        return frame;
    }

    /** The bytes with their last two made the checksum of the others, which chance hardly finds. */
    private static byte[] withChecksum(byte[] bytes) {
        if (bytes.length > 2) {
            int crc = table(bytes, bytes.length - 2);
            bytes[bytes.length - 2] = (byte) crc;
            bytes[bytes.length - 1] = (byte) (crc >> 8);
        }
        return bytes;
    }

    private static boolean contains(byte[] heard, int count, byte[] frame) {
        for (int at = 0; at + frame.length <= count; at++) {
            if (Arrays.equals(heard, at, at + frame.length, frame, 0, frame.length)) {
                return true;
            }
        }
        return false;
    }

    /** CRC-16/MODBUS by a table of nibbles, where {@link Frames} goes bit by bit. */
    private static int table(byte[] bytes, int count) {
        int crc = 0xffff;
        for (int i = 0; i < count; i++) {
            int b = bytes[i] & 0xff;
            crc = nibble((crc ^ b) & 0xf) ^ (crc >> 4);
            crc = nibble((crc ^ (b >> 4)) & 0xf) ^ (crc >> 4);
        }
        return crc;
    }

    private static int nibble(int index) {
        return NIBBLES[index];
    }

    /** From memory, the usual sixteen words of the reversed polynomial 0xa001. */
    private static final int[] NIBBLES = {
        0x0000, 0xcc01, 0xd801, 0x1400, 0xf001, 0x3c00, 0x2800, 0xe401,
        0xa001, 0x6c00, 0x7800, 0xb401, 0x5000, 0x9c01, 0x8801, 0x4400
    };
}
