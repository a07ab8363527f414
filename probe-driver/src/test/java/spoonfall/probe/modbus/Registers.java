package spoonfall.probe.modbus;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** The frames of instruments, for tests. */
final class Registers {
    private Registers() {}

    /** An answer to {@code request} with these data. */
    static byte[] answer(byte[] request, byte[] data) {
        ByteBuffer body = ByteBuffer.allocate(3 + data.length);
        return signed(body.put(request[0])
                .put(request[1])
                .put((byte) data.length)
                .put(data)
                .array());
    }

    /** A temperature in hundredths, as one register. */
    static byte[] hundredths(double celsius) {
        return ByteBuffer.allocate(2)
                .putShort((short) Math.round(celsius * 100))
                .array();
    }

    /** A temperature as a single-precision number in two registers, high word first. */
    static byte[] highFirst(double celsius) {
        return ByteBuffer.allocate(4).putFloat((float) celsius).array();
    }

    /** Likewise, low word first. */
    static byte[] lowFirst(double celsius) {
        byte[] high = highFirst(celsius);
        return new byte[] {high[2], high[3], high[0], high[1]};
    }

    /** The register that a request is for. */
    static int register(byte[] request) {
        return (request[2] & 0xff) << 8 | (request[3] & 0xff);
    }

    /** A frame with its checksum. */
    static byte[] signed(byte[] body) {
        byte[] frame = Arrays.copyOf(body, body.length + 2);
        int crc = Frames.crc(body, body.length);
        frame[body.length] = (byte) crc;
        frame[body.length + 1] = (byte) (crc >> 8);
        return frame;
    }

    /** The frame with its last byte broken. */
    static byte[] damaged(byte[] frame) {
        byte[] broken = frame.clone();
        broken[frame.length - 1] ^= 0x55;
        return broken;
    }

    /** One after the other. */
    static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
