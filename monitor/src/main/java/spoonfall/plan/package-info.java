/**
 * What will come of a batch before it is cooked: mass balance, yield, time, and what published guidance says of it. Pure: no clock,
 * no threads, no input or output. Never a recipe, never a processing time. Depends on foods, the syrup's physics and units.
 */
@NullMarked
package spoonfall.plan;

import org.jspecify.annotations.NullMarked;
