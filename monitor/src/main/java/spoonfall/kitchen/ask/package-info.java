/**
 * Questions that a thread of the kitchen answers, what it refuses, and which taps it has taken. Depends on nothing of the kitchen.
 */
@NullMarked
package spoonfall.kitchen.ask;

import org.jspecify.annotations.NullMarked;
