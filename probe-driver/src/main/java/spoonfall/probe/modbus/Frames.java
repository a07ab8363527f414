package spoonfall.probe.modbus;

import java.util.Arrays;

/** Modbus RTU frames, by "MODBUS over Serial Line" 1.02 and the "MODBUS Application Protocol" 1.1b3. */
final class Frames {
    private static final int CRC_START = 0xffff;
    private static final int CRC_POLYNOMIAL = 0xa001;
    private static final int EXCEPTION = 0x80;
    private static final int EXCEPTION_LENGTH = 5;
    private static final int HOLDING = 3;
    private static final int INPUT = 4;

    /** Address, function and length before the data, and the checksum behind it. */
    private static final int AROUND_DATA = 5;

    private Frames() {}

    /** The checksum of the first {@code count} bytes; it goes on the wire low byte first. */
    static int crc(byte[] bytes, int count) {
        int crc = CRC_START;
        for (int i = 0; i < count; i++) {
            crc ^= bytes[i] & 0xff;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ CRC_POLYNOMIAL;
            }
        }
        return crc;
    }

    /** How many bytes an answer with a register's number has. */
    static int answerLength(RegisterSettings register) {
        return AROUND_DATA + 2 * register.type().registers();
    }

    /** A request to read registers. */
    static byte[] request(RegisterSettings register) {
        int address = register.register();
        byte[] frame = {
            (byte) register.instrument(),
            (byte) register.function(),
            (byte) (address >> 8),
            (byte) address,
            0,
            (byte) register.type().registers(),
            0,
            0
        };
        int crc = crc(frame, 6);
        frame[6] = (byte) crc;
        frame[7] = (byte) (crc >> 8);
        return frame;
    }

    /**
     * Judges the first {@code count} bytes since {@code request} was sent. Length by function code and checksum decide
     * what a frame is, wherever it begins: the silence that the protocol puts around a frame cannot be seen through a
     * USB adapter, which hands over bytes in parcels. An echo of the request, as on a two-wire line, the rest of a late
     * answer and whole frames of others are passed over.
     */
    static Answer judge(byte[] request, byte[] bytes, int count) {
        boolean echoed = count >= request.length && Arrays.equals(request, 0, request.length, bytes, 0, request.length);
        int explained = echoed ? request.length : 0;
        Answer soFar = new Answer.Incomplete(false);
        // Byte by byte even through frames of others: a cut one may end with the first byte of the answer.
        for (int at = explained; at < count; at++) {
            int length = length(bytes, at, count);
            byte[] frame = Arrays.copyOfRange(bytes, at, at + length);
            if (length > 0 && crc(frame, length) == 0) {
                soFar = content(request, frame);
                if (soFar.settled()) {
                    return soFar;
                }
                explained = Math.max(explained, at + length);
            }
        }
        int rest = count - explained;
        if (rest == 0) {
            return soFar;
        }
        return rest < AROUND_DATA + dataLength(request)
                ? new Answer.Incomplete(true)
                : new Answer.Wrong("answers, but its checksum is wrong", true);
    }

    /** The bytes of a frame to read registers that wholly lies at {@code at}, by its function code; 0 if none does. */
    private static int length(byte[] bytes, int at, int count) {
        int available = count - at;
        if (available < EXCEPTION_LENGTH) {
            return 0;
        }
        int function = bytes[at + 1] & 0xff;
        int length = 0;
        if (function == HOLDING || function == INPUT) {
            length = AROUND_DATA + (bytes[at + 2] & 0xff);
        } else if (function == (HOLDING | EXCEPTION) || function == (INPUT | EXCEPTION)) {
            length = EXCEPTION_LENGTH;
        }
        return length <= available ? length : 0;
    }

    /** What a whole frame says. */
    private static Answer content(byte[] request, byte[] frame) {
        if (frame[0] != request[0]) {
            return new Answer.Wrong("does not answer, but instrument " + (frame[0] & 0xff) + " does", false);
        }
        if ((frame[1] & ~EXCEPTION & 0xff) != request[1]) {
            return new Answer.Wrong("answers another question", false);
        }
        if ((frame[1] & EXCEPTION) != 0) {
            return new Answer.Refused(frame[2] & 0xff);
        }
        if ((frame[2] & 0xff) != dataLength(request)) {
            return new Answer.Wrong("answers with another number of registers", false);
        }
        return new Answer.Data(Arrays.copyOfRange(frame, 3, frame.length - 2));
    }

    private static int dataLength(byte[] request) {
        return 2 * request[5];
    }
}
