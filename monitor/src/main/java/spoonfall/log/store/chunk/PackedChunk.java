package spoonfall.log.store.chunk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;

/**
 * A chunk packed again (RFC 1951): its version (2), how many bytes its readings take unpacked (four bytes), those deflated, and the CRC-32 of all that.
 */
public final class PackedChunk {
    private static final int MOST_BYTES = 4 * 1024 * 1024;
    private static final int HEAD_BYTES = 1 + Integer.BYTES;

    private PackedChunk() {}

    /** A chunk of {@link ChunkWriter} packed again. */
    public static byte[] of(byte[] chunk) {
        int length = chunk.length - HEAD_BYTES;
        ByteArrayOutputStream packed = new ByteArrayOutputStream(length);
        packed.write(Packing.PACKED);
        packed.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(length).array());
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(chunk, 1, length);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        CRC32 sum = new CRC32();
        sum.update(packed.toByteArray());
        packed.writeBytes(
                ByteBuffer.allocate(Integer.BYTES).putInt((int) sum.getValue()).array());
        return packed.toByteArray();
    }

    /**
     * The bytes of its readings, of a chunk whose sum is right.
     *
     * @throws IllegalArgumentException if they are not what it says
     */
    static byte[] unpacked(byte[] packed) {
        int length = packed.length < HEAD_BYTES + Integer.BYTES
                ? -1
                : ByteBuffer.wrap(packed).getInt(1);
        if (length < 0 || length > MOST_BYTES) {
            throw new IllegalArgumentException("a packed chunk cannot hold " + length + " bytes");
        }
        byte[] readings = new byte[length];
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(packed, HEAD_BYTES, packed.length - HEAD_BYTES - Integer.BYTES);
            int got = 0;
            while (got < length) {
                int more = inflater.inflate(readings, got, length - got);
                if (more == 0) {
                    throw new IllegalArgumentException("a packed chunk ends too early");
                }
                got += more;
            }
            return readings;
        } catch (DataFormatException e) {
            throw new IllegalArgumentException("a packed chunk of readings was damaged", e);
        } finally {
            inflater.end();
        }
    }
}
