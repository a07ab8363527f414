/**
 * A pan on the hob, put together, with what a page shows of it, and the keeper who has its thread answer and tells everybody.
 * Depends on {@code afternoon}, {@code cook} and whatever is below them.
 */
@NullMarked
package spoonfall.kitchen.pan;

import org.jspecify.annotations.NullMarked;
