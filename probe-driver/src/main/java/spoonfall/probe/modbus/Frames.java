package spoonfall.probe.modbus;

import java.util.Arrays;

/** Modbus RTU frames, by "MODBUS over Serial Line" 1.02 and the "MODBUS Application Protocol" 1.1b3. */
final class Frames {
    private static final int CRC_START = 0xffff;
    private static final int CRC_POLYNOMIAL = 0xa001;
    private static final int EXCEPTION = 0x80;
    private static final int EXCEPTION_LENGTH = 5;

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

    /** What came back, judged. */
    sealed interface Answer {
        /** Not all of it is there yet. */
        record Incomplete() implements Answer {}

        /**
         * The registers' bytes.
         *
         * @param data high byte first
         */
        @SuppressWarnings("ArrayRecordComponent") // read once, at once
        record Data(byte[] data) implements Answer {}

        /**
         * The instrument says that it cannot.
         *
         * @param code exception code of the protocol
         */
        record Refused(int code) implements Answer {}

        /**
         * It is not an answer to what was asked.
         *
         * @param why in a few words
         */
        record Wrong(String why) implements Answer {}
    }

    /**
     * Judges the first {@code count} bytes as an answer to {@code request}. An echo of the request, as on a
     * two-wire line, is passed over.
     */
    static Answer judge(byte[] request, byte[] bytes, int count) {
        boolean echoed = count >= request.length && Arrays.equals(request, 0, request.length, bytes, 0, request.length);
        byte[] frame = Arrays.copyOfRange(bytes, echoed ? request.length : 0, count);
        if (frame.length < EXCEPTION_LENGTH) {
            return new Answer.Incomplete();
        }
        boolean exception = (frame[1] & EXCEPTION) != 0;
        int expected = exception ? EXCEPTION_LENGTH : 3 + (frame[2] & 0xff) + 2;
        if (frame.length < expected) {
            return new Answer.Incomplete();
        }
        int crc = (frame[expected - 2] & 0xff) | (frame[expected - 1] & 0xff) << 8;
        if (crc != crc(frame, expected - 2)) {
            return new Answer.Wrong("its checksum is wrong");
        }
        if (frame[0] != request[0]) {
            return new Answer.Wrong("instrument " + (frame[0] & 0xff) + " answered for another");
        }
        if ((frame[1] & ~EXCEPTION & 0xff) != request[1]) {
            return new Answer.Wrong("it answers another question");
        }
        if (exception) {
            return new Answer.Refused(frame[2] & 0xff);
        }
        if ((frame[2] & 0xff) != 2 * request[5]) {
            return new Answer.Wrong("it has another number of registers");
        }
        return new Answer.Data(Arrays.copyOfRange(frame, 3, expected - 2));
    }
}
