/**
 * A cook as a lesson: what was seen and said while it lasted, and the moments at which something was to be done, with what was done. Pure;
 * depends on the kitchen, which goes through a cook again, on words, the record and the cook.
 */
@NullMarked
package spoonfall.lesson;

import org.jspecify.annotations.NullMarked;
