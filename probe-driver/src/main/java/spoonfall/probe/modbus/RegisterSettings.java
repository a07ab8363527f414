package spoonfall.probe.modbus;

import java.nio.ByteBuffer;
import java.util.Locale;

/**
 * Where an instrument keeps its temperature.
 *
 * @param instrument its address on the line, 1 to 247
 * @param function 3 for a holding register, 4 for an input register
 * @param register the register's address in the frame, from 0 to 65535
 * @param type how the number is kept
 * @param lowWordFirst whether the low word of a 32-bit number comes first
 * @param scale what the number is multiplied with, such as 0.1
 */
public record RegisterSettings(
        int instrument, int function, int register, Type type, boolean lowWordFirst, double scale) {

    /** How a number is kept in registers. */
    public enum Type {
        /** Sixteen bits with a sign. */
        INT16(1),
        /** Sixteen bits without a sign. */
        UINT16(1),
        /** Thirty-two bits with a sign. */
        INT32(2),
        /** Thirty-two bits without a sign. */
        UINT32(2),
        /** A single-precision number of IEEE 754. */
        FLOAT(2);

        private final int registers;

        Type(int registers) {
            this.registers = registers;
        }

        /** How many registers it takes. */
        public int registers() {
            return registers;
        }

        /** The name in a spec, such as {@code int16}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Validates the numbers. */
    public RegisterSettings {
        if (instrument < 1 || instrument > 247) {
            throw new IllegalArgumentException("id must be 1 to 247, the instrument's address, not " + instrument);
        }
        if (function != 3 && function != 4) {
            throw new IllegalArgumentException(
                    "function must be 3 (holding register) or 4 (input register), not " + function);
        }
        if (register < 0 || register > 65535) {
            throw new IllegalArgumentException("register must be 0 to 65535, not " + register);
        }
        if (!(Math.abs(scale) >= 1e-9 && Math.abs(scale) <= 1e9)) {
            throw new IllegalArgumentException("scale must be a number such as 0.1, not " + scale);
        }
    }

    /** Whether {@code other} asks the same instrument for the same register, however it reads the number. */
    public boolean sameAs(RegisterSettings other) {
        return instrument == other.instrument && function == other.function && register == other.register;
    }

    /** The scaled number in the bytes of an answer, high byte of each register first. */
    double value(byte[] data) {
        ByteBuffer bytes = ByteBuffer.wrap(data);
        if (type.registers() == 2 && lowWordFirst) {
            bytes = ByteBuffer.wrap(new byte[] {data[2], data[3], data[0], data[1]});
        }
        return scale
                * switch (type) {
                    case INT16 -> bytes.getShort(0);
                    case UINT16 -> bytes.getShort(0) & 0xffff;
                    case INT32 -> bytes.getInt(0);
                    case UINT32 -> bytes.getInt(0) & 0xffff_ffffL;
                    case FLOAT -> bytes.getFloat(0);
                };
    }
}
