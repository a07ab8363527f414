package spoonfall.log.store.book;

import java.time.Instant;

/**
 * A photo of a cook outside the record.
 *
 * @param digest SHA-256 in hexadecimal of the file that once came in, which tells it from others
 * @param takenInAt when it came into the book
 * @param width in pixels
 * @param height in pixels
 * @param jpeg its bytes
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, compared never
public record WholePhoto(String digest, Instant takenInAt, int width, int height, byte[] jpeg) {
    /** Looks into the bytes of a photo before they are believed. */
    public interface Check {
        /**
         * The same photo, or one that was made of it.
         *
         * @throws IllegalArgumentException with one line that says what is wrong with it
         */
        WholePhoto checked(String digest, Instant takenInAt, byte[] file);
    }
}
