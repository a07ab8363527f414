package spoonfall.log.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.Objects;

/**
 * A photo of a cook outside the record.
 *
 * @param digest SHA-256 in hexadecimal of the file that once came in, which tells it from others
 * @param takenInAt when it came into the book
 * @param width in pixels
 * @param height in pixels
 * @param jpeg its bytes
 */
@SuppressWarnings("ArrayRecordComponent") // compared by what is in it, below
public record WholePhoto(String digest, Instant takenInAt, int width, int height, byte[] jpeg) {
    @Override
    public boolean equals(Object other) {
        return other instanceof WholePhoto photo
                && digest.equals(photo.digest)
                && takenInAt.equals(photo.takenInAt)
                && width == photo.width
                && height == photo.height
                && Arrays.equals(jpeg, photo.jpeg);
    }

    @Override
    public int hashCode() {
        return Objects.hash(digest, takenInAt, width, height, Arrays.hashCode(jpeg));
    }

    @Override
    public String toString() {
        return "photo " + digest + ", " + width + " by " + height + " pixels";
    }

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
