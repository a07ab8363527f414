/**
 * The monitor itself: readings in, events out. Pure: no clock, no threads, no input or output, so that a
 * replay gives exactly what the live cook gave. Depends on the alarm life cycle, the physics and readings.
 */
@NullMarked
package spoonfall.cook;

import org.jspecify.annotations.NullMarked;
