package spoonfall.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Every reading of one cook as the monitor took it, in memory. All but the latest are packed without loss, in blocks, of which the one
 * that is read is unpacked: going through them in order costs little, jumping about does not. At a million readings (more than a day at
 * ten a second) the older half is thinned to every second reading, so that memory has a limit.
 *
 * <p>Not safe for use by several threads; a copy may be used by another one.
 */
public final class CookRecord {
    private static final int MOST = 1_000_000;
    private static final int BLOCK = 1024;

    private final List<Block> packed = new ArrayList<>();
    private Readings latest = new Readings();
    private Readings read = new Readings();
    private int readBlock = -1;
    private int size;

    /** A block of readings. */
    private static final class Readings {
        private final double[] times = new double[BLOCK];
        private final double[] temperatures = new double[BLOCK];

        Readings copy() {
            Readings copy = new Readings();
            System.arraycopy(times, 0, copy.times, 0, BLOCK);
            System.arraycopy(temperatures, 0, copy.temperatures, 0, BLOCK);
            return copy;
        }
    }

    /** The same, packed. */
    private record Block(PackedColumn times, PackedColumn temperatures) {
        static Block of(Readings readings) {
            return new Block(PackedColumn.of(readings.times, true), PackedColumn.of(readings.temperatures, false));
        }

        void unpack(Readings readings) {
            times.unpack(readings.times);
            temperatures.unpack(readings.temperatures);
        }
    }

    /**
     * Adds a good reading.
     *
     * @param t seconds of the cook; not before the last one
     * @param temperatureC in °C
     */
    public void add(double t, double temperatureC) {
        if (size == MOST) {
            thin();
        }
        int at = size % BLOCK;
        latest.times[at] = t;
        latest.temperatures[at] = temperatureC;
        size++;
        if (at == BLOCK - 1) {
            packed.add(Block.of(latest));
        }
    }

    /** Takes the latest reading away. */
    public void removeLast() {
        if (size == 0) {
            throw new IllegalStateException("there is no reading to take away");
        }
        size--;
        if (size / BLOCK < packed.size()) {
            int last = packed.size() - 1;
            packed.remove(last).unpack(latest);
            readBlock = readBlock == last ? -1 : readBlock;
        }
    }

    /** How many readings it holds. */
    public int size() {
        return size;
    }

    /** Seconds of the cook at reading {@code i}. */
    public double t(int i) {
        return holding(i).times[i % BLOCK];
    }

    /** Temperature in °C of reading {@code i}. */
    public double temperatureC(int i) {
        return holding(i).temperatures[i % BLOCK];
    }

    /** A copy of the record as it is now. */
    public CookRecord copy() {
        CookRecord copy = new CookRecord();
        copy.packed.addAll(packed);
        copy.latest = latest.copy();
        copy.size = size;
        return copy;
    }

    /** How many bytes its readings take, those that wait to be packed and those that are being read included. */
    long bytes() {
        long bytes = 2L * 2 * BLOCK * Double.BYTES;
        for (Block block : packed) {
            bytes += block.times().bytes() + block.temperatures().bytes();
        }
        return bytes;
    }

    private Readings holding(int i) {
        if (i < 0 || i >= size) {
            throw new IndexOutOfBoundsException(i);
        }
        int block = i / BLOCK;
        if (block == packed.size()) {
            return latest;
        }
        if (block != readBlock) {
            packed.get(block).unpack(read);
            readBlock = block;
        }
        return read;
    }

    private void thin() {
        CookRecord kept = new CookRecord();
        for (int i = 0; i < size; i++) {
            if (i >= size / 2 || i % 2 == 0) {
                kept.add(t(i), temperatureC(i));
            }
        }
        packed.clear();
        packed.addAll(kept.packed);
        latest = kept.latest;
        readBlock = -1;
        size = kept.size;
    }
}
