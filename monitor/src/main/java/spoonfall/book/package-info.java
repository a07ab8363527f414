/**
 * What the batch book holds of a cook beside its readings: what was made, how it came out, and its climb as a line to draw. Pure; depends
 * on nothing of ours.
 */
@NullMarked
package spoonfall.book;

import org.jspecify.annotations.NullMarked;
