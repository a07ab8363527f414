/**
 * Questions that a thread of the kitchen answers, and what it refuses. Depends on nothing of the kitchen.
 */
@NullMarked
package spoonfall.kitchen.ask;

import org.jspecify.annotations.NullMarked;
