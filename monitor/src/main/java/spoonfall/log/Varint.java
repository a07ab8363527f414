package spoonfall.log;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

/** Whole numbers as seven bits a byte, the lowest first; every byte but the last has its eighth bit set. Small numbers take little room. */
public final class Varint {
    private Varint() {}

    /** Writes a number without a sign. */
    public static void put(long value, ByteArrayOutputStream bytes) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            bytes.write((int) ((rest & 0x7F) | 0x80));
            rest >>>= 7;
        }
        bytes.write((int) rest);
    }

    /** Writes a number of either sign: small ones of either become small ones without. */
    public static void putSigned(long value, ByteArrayOutputStream bytes) {
        put((value << 1) ^ (value >> 63), bytes);
    }

    /**
     * Reads what {@link #put} wrote.
     *
     * @throws java.nio.BufferUnderflowException if the bytes end before it
     * @throws IllegalArgumentException if it is longer than any number
     */
    public static long get(ByteBuffer bytes) {
        long value = 0;
        for (int shift = 0; shift < Long.SIZE; shift += 7) {
            byte next = bytes.get();
            value |= (long) (next & 0x7F) << shift;
            if (next >= 0) {
                return value;
            }
        }
        throw new IllegalArgumentException("a number of a chunk has no end");
    }

    /** Reads what {@link #putSigned} wrote, and throws what {@link #get} does. */
    public static long getSigned(ByteBuffer bytes) {
        long value = get(bytes);
        return (value >>> 1) ^ -(value & 1);
    }
}
