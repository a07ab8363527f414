package spoonfall.log.store.book;

import java.time.Instant;

/**
 * A photo of a batch, without its bytes.
 *
 * @param id where it is kept
 * @param takenInAt when it came into the book
 * @param width in pixels
 * @param height in pixels
 */
public record BookPhoto(long id, Instant takenInAt, int width, int height) {}
