/**
 * Clocks that know when the machine slept and when its wall clock was set. Depends on nothing of the kitchen.
 */
@NullMarked
package spoonfall.kitchen.clock;

import org.jspecify.annotations.NullMarked;
