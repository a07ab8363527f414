package spoonfall.log.store.chunk;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import spoonfall.log.CookInput;
import spoonfall.log.Varint;

/**
 * Packs the readings of about a minute into bytes, three or so each: what a thermometer sends next is mostly near what
 * it sent last, a usual interval later. {@link ChunkReader} says what the bytes mean.
 */
public final class ChunkWriter {
    private static final long LONGEST_MILLIS = 60_000;
    private static final int MOST_BYTES = 3500;

    private final Packing[] last;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(256);
    private long firstMillis;
    private int count;

    /** A chunk without readings of so many thermometers. */
    public ChunkWriter(int probes) {
        last = new Packing[probes];
        Arrays.setAll(last, i -> Packing.NOTHING);
        bytes.write(Packing.VERSION);
    }

    /** How many readings it holds. */
    public int count() {
        return count;
    }

    /** Whether the next reading belongs into a new one. */
    public boolean full(long takenMillis) {
        return count > 0 && (takenMillis - firstMillis >= LONGEST_MILLIS || bytes.size() >= MOST_BYTES);
    }

    /** Adds a reading of the thermometer with that index. */
    public void add(int probe, CookInput.Heard heard) {
        if (count++ == 0) {
            firstMillis = heard.takenMillis();
        }
        Packing before = last[probe];
        Packing.Value value = Packing.value(heard, before.mode());
        int tag = (Math.min(probe, Packing.MANY_PROBES) << Packing.MODE_BITS) | value.mode();
        bytes.write(tag);
        if (probe >= Packing.MANY_PROBES) {
            Varint.put(probe, bytes);
        }
        Varint.putSigned(heard.takenMillis() - before.expectedMillis(), bytes);
        if (probe > 0) {
            Varint.putSigned(heard.takenMillis() - heard.atMillis(), bytes);
        }
        switch (value.mode()) {
            case Packing.BAD -> word(heard.quality().wireName());
            case Packing.EXACT ->
                bytes.writeBytes(ByteBuffer.allocate(Double.BYTES)
                        .putDouble(heard.shownC().orElseThrow())
                        .array());
            default -> Varint.putSigned(value.units() - (value.mode() == before.mode() ? before.units() : 0), bytes);
        }
        last[probe] = before.next(heard.takenMillis(), value);
    }

    /** All of it, with a sum that tells whether it was damaged. */
    public byte[] toBytes() {
        byte[] packed = bytes.toByteArray();
        CRC32 sum = new CRC32();
        sum.update(packed);
        return ByteBuffer.allocate(packed.length + Integer.BYTES)
                .put(packed)
                .putInt((int) sum.getValue())
                .array();
    }

    /** The same, to go on with apart from this one. */
    public ChunkWriter copy() {
        ChunkWriter copy = new ChunkWriter(last.length);
        System.arraycopy(last, 0, copy.last, 0, last.length);
        copy.bytes.reset();
        copy.bytes.writeBytes(bytes.toByteArray());
        copy.firstMillis = firstMillis;
        copy.count = count;
        return copy;
    }

    private void word(String text) {
        byte[] ascii = text.getBytes(StandardCharsets.US_ASCII);
        Varint.put(ascii.length, bytes);
        bytes.writeBytes(ascii);
    }
}
