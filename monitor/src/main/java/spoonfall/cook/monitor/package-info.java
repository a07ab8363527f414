/**
 * The monitor itself: readings in, events out. A replay gives exactly what the live cook gave. Depends on all
 * beside it.
 */
@NullMarked
package spoonfall.cook.monitor;

import org.jspecify.annotations.NullMarked;
