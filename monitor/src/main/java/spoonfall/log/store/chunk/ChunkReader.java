package spoonfall.log.store.chunk;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import spoonfall.log.CookInput;
import spoonfall.log.Varint;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * Unpacks what {@link ChunkWriter} packed. A chunk is a version (1), its readings and the CRC-32 of all that. A reading is a
 * tag (three bits of mode, five of thermometer), then numbers of seven bits a byte: when it was taken, against one usual
 * interval after the one before; for all thermometers but the first how much older it was by then; and its value. By
 * mode that is the difference from the one before in 1, 0.1, 0.01 or 0.001 °C (0 to 3), in 0.1 or 0.01 °F (6, 7), eight
 * bytes of a double (4), or the name of what was wrong (5). {@link PackedChunk} packs such a chunk again.
 */
public final class ChunkReader {
    private final ByteBuffer bytes;
    private final List<String> probes;
    private final Packing[] last;

    private ChunkReader(ByteBuffer bytes, List<String> probes) {
        this.bytes = bytes;
        this.probes = probes;
        last = new Packing[probes.size()];
        Arrays.setAll(last, i -> Packing.NOTHING);
    }

    /**
     * The readings of a chunk.
     *
     * @throws IllegalArgumentException if it was damaged
     */
    public static List<CookInput.Heard> read(byte[] chunk, List<String> probes) {
        if (chunk.length < 1 + Integer.BYTES) {
            throw new IllegalArgumentException("a chunk of " + chunk.length + " bytes holds nothing");
        }
        int length = chunk.length - Integer.BYTES;
        CRC32 sum = new CRC32();
        sum.update(chunk, 0, length);
        if ((int) sum.getValue() != ByteBuffer.wrap(chunk).getInt(length)) {
            throw new IllegalArgumentException("a chunk of readings was damaged");
        }
        if (chunk[0] != Packing.VERSION && chunk[0] != Packing.PACKED) {
            throw new IllegalArgumentException("a chunk of version " + chunk[0] + " needs a newer Spoonfall");
        }
        try {
            ByteBuffer readings = chunk[0] == Packing.VERSION
                    ? ByteBuffer.wrap(chunk, 1, length - 1)
                    : ByteBuffer.wrap(PackedChunk.unpacked(chunk));
            return new ChunkReader(readings, probes).all();
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("a chunk of readings ends too early", e);
        }
    }

    private List<CookInput.Heard> all() {
        List<CookInput.Heard> readings = new ArrayList<>();
        while (bytes.hasRemaining()) {
            readings.add(next());
        }
        return readings;
    }

    private CookInput.Heard next() {
        int tag = bytes.get() & 0xFF;
        int mode = tag & ((1 << Packing.MODE_BITS) - 1);
        int probe = tag >> Packing.MODE_BITS;
        if (probe == Packing.MANY_PROBES) {
            probe = (int) Varint.get(bytes);
        }
        Packing before = last[probe];
        long takenMillis = before.expectedMillis() + Varint.getSigned(bytes);
        long atMillis = probe > 0 ? takenMillis - Varint.getSigned(bytes) : takenMillis;
        Packing.Value value = new Packing.Value(mode, 0);
        OptionalDouble shownC = OptionalDouble.empty();
        Quality quality = Quality.GOOD;
        if (mode == Packing.BAD) {
            quality = quality();
        } else if (mode == Packing.EXACT) {
            shownC = OptionalDouble.of(bytes.getDouble());
        } else {
            value = new Packing.Value(mode, (mode == before.mode() ? before.units() : 0) + Varint.getSigned(bytes));
            shownC = OptionalDouble.of(Packing.temperatureC(mode, value.units()));
        }
        if (shownC.isPresent() && Reading.qualityOf(shownC.getAsDouble()) != Quality.GOOD) {
            throw new IllegalArgumentException("no thermometer shows " + shownC.getAsDouble() + " °C");
        }
        last[probe] = before.next(takenMillis, value);
        return new CookInput.Heard(probes.get(probe), takenMillis, atMillis, shownC, quality);
    }

    private Quality quality() {
        byte[] ascii = new byte[(int) Math.max(0, Math.min(64, Varint.get(bytes)))];
        bytes.get(ascii);
        String name = new String(ascii, StandardCharsets.US_ASCII);
        for (Quality quality : Quality.values()) {
            if (quality.wireName().equals(name)) {
                return quality;
            }
        }
        throw new IllegalArgumentException("no reading is \"" + name + "\"");
    }
}
