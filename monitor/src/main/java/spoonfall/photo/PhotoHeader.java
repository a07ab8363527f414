package spoonfall.photo;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * What the first bytes of a file say of a photo, read without decoding anything: a small file may claim, and then fill, any number of
 * pixels. Follows ISO/IEC 10918-1 (JPEG), ISO/IEC 15948 (PNG) and JEITA CP-3451 (the orientation in Exif), from memory.
 *
 * @param kind {@code jpeg} or {@code png}
 * @param width in pixels
 * @param height in pixels
 * @param orientation 1 to 8 as in Exif: how it must be turned to stand upright; 1 for not at all
 */
record PhotoHeader(String kind, int width, int height, int orientation) {
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final int IHDR = 0x49484452;
    private static final int JPEG = 0xFFD8;
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int ORIENTATION = 0x0112;
    private static final int MOST_TAGS = 200;

    /** The header of a file; a {@link PhotoException} if it is neither. */
    static PhotoHeader of(byte[] file) throws PhotoException {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(file);
            if (bytes.remaining() > Long.BYTES && bytes.getLong(0) == PNG) {
                return png(bytes.position(Long.BYTES));
            }
            if (bytes.remaining() > Short.BYTES && (bytes.getShort(0) & 0xFFFF) == JPEG) {
                return jpeg(bytes.position(Short.BYTES));
            }
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            throw new PhotoException("that photo ends too early; send it again", e);
        }
        throw new PhotoException("that is neither a JPEG nor a PNG; save the photo as one of them");
    }

    private static PhotoHeader png(ByteBuffer bytes) throws PhotoException {
        bytes.getInt();
        if (bytes.getInt() != IHDR) {
            throw new PhotoException("that PNG is damaged; save it again");
        }
        return new PhotoHeader("png", bytes.getInt(), bytes.getInt(), 1);
    }

    private static PhotoHeader jpeg(ByteBuffer bytes) throws PhotoException {
        int orientation = 1;
        while (true) {
            int mark = bytes.get() & 0xFF;
            if (mark != 0xFF) {
                throw new PhotoException("that JPEG is damaged; save it again");
            }
            int kind = bytes.get() & 0xFF;
            while (kind == 0xFF) {
                kind = bytes.get() & 0xFF;
            }
            int length = (bytes.getShort() & 0xFFFF) - Short.BYTES;
            if (length < 0 || kind == START_OF_SCAN) {
                throw new PhotoException("that JPEG is damaged; save it again");
            }
            int next = bytes.position() + length;
            if (next > bytes.limit()) {
                throw new BufferUnderflowException();
            }
            if (isFrame(kind)) {
                bytes.get();
                int height = bytes.getShort() & 0xFFFF;
                return new PhotoHeader("jpeg", bytes.getShort() & 0xFFFF, height, orientation);
            }
            if (kind == APP1) {
                orientation =
                        orientation(bytes.slice(bytes.position(), Math.min(length, bytes.remaining())), orientation);
            }
            bytes.position(next);
        }
    }

    private static boolean isFrame(int kind) {
        return kind >= 0xC0 && kind <= 0xCF && kind != 0xC4 && kind != 0xC8 && kind != 0xCC;
    }

    /** What Exif says; what it was if that cannot be read, for a photo on its side is better than none. */
    private static int orientation(ByteBuffer exif, int before) {
        try {
            byte[] name = new byte[6];
            exif.get(name);
            if (!new String(name, StandardCharsets.US_ASCII).equals("Exif\0\0")) {
                return before;
            }
            ByteBuffer tiff = exif.slice();
            tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            int at = tiff.getInt(4);
            int tags = Math.min(MOST_TAGS, tiff.getShort(at) & 0xFFFF);
            for (int i = 0; i < tags; i++) {
                int tag = at + 2 + 12 * i;
                int value = tiff.getShort(tag + 8);
                if ((tiff.getShort(tag) & 0xFFFF) == ORIENTATION && value >= 1 && value <= 8) {
                    return value;
                }
            }
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            return before;
        }
        return before;
    }
}
