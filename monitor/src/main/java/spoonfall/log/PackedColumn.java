package spoonfall.log;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

/**
 * Numbers that lie near each other, in little room and without loss: whole multiples of the largest of 1, 0.1, 0.01, 0.001 and 0.0001 that
 * gives back every one of them bit by bit, else their bits. Each is kept as its difference from what the ones before let expect, seven
 * bits a byte, so that a reading in tenths of a degree takes one byte and the time of a regular one another.
 */
final class PackedColumn {
    private static final double[] PARTS = {1, 10, 100, 1_000, 10_000};
    private static final int BITS = PARTS.length;

    private final int parts;
    private final boolean regular;
    private final byte[] bytes;

    private PackedColumn(int parts, boolean regular, byte[] bytes) {
        this.parts = parts;
        this.regular = regular;
        this.bytes = bytes;
    }

    /**
     * Packs numbers.
     *
     * @param regular whether each is expected as far from the one before as that was from its own, not where it was
     */
    static PackedColumn of(double[] values, boolean regular) {
        int parts = 0;
        while (parts < BITS && !exactIn(parts, values)) {
            parts++;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(2 * values.length);
        long before = 0;
        long step = 0;
        for (double value : values) {
            long units = units(value, parts);
            Varint.putSigned(units - before - step, bytes);
            step = regular ? units - before : 0;
            before = units;
        }
        return new PackedColumn(parts, regular, bytes.toByteArray());
    }

    /** Unpacks the numbers, as many as there is room for in {@code values}: no more than were packed. */
    void unpack(double[] values) {
        ByteBuffer packed = ByteBuffer.wrap(bytes);
        long before = 0;
        long step = 0;
        for (int i = 0; i < values.length; i++) {
            long units = before + step + Varint.getSigned(packed);
            step = regular ? units - before : 0;
            before = units;
            values[i] = value(units, parts);
        }
    }

    /** How many bytes the numbers take. */
    int bytes() {
        return bytes.length;
    }

    private static boolean exactIn(int parts, double[] values) {
        for (double value : values) {
            double again = value(units(value, parts), parts);
            if (Double.doubleToRawLongBits(again) != Double.doubleToRawLongBits(value)) {
                return false;
            }
        }
        return true;
    }

    private static long units(double value, int parts) {
        return parts == BITS ? Double.doubleToRawLongBits(value) : Math.round(value * PARTS[parts]);
    }

    private static double value(long units, int parts) {
        return parts == BITS ? Double.longBitsToDouble(units) : units / PARTS[parts];
    }
}
