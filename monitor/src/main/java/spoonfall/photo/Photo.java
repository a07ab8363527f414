package spoonfall.photo;

/**
 * A photo that was made anew: a JPEG of at most {@link PhotoMaker#LONGEST_SIDE} pixels a side, with nothing in it but what can be seen.
 *
 * @param digest SHA-256 of the file that came in, in hexadecimal
 * @param width in pixels
 * @param height in pixels
 * @param jpeg its bytes
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, compared never
public record Photo(String digest, int width, int height, byte[] jpeg) {}
