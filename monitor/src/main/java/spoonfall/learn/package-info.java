/**
 * What final rise gave which set: an ordinal model of this cook's batches, the next target that it proposes, and why a
 * batch failed. Pure: no clock, thread, file or network. May depend on the physics and the words of
 * the batch book, and on nothing else of ours.
 */
@NullMarked
package spoonfall.learn;

import org.jspecify.annotations.NullMarked;
