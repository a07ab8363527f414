/**
 * Going through a cook again: after a restart or a sleep, or out of the record. Depends on {@code pan} and whatever is below
 * it.
 */
@NullMarked
package spoonfall.kitchen.again;

import org.jspecify.annotations.NullMarked;
