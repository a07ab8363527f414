/**
 * The watch over filled jars, from the canner's boil to their seals: taps and readings in, events out. Pure: no clock,
 * no threads, no input or output; nothing can end a time early. Depends on the published times, alarms and physics.
 */
@NullMarked
package spoonfall.canner;

import org.jspecify.annotations.NullMarked;
