/**
 * Filled jars: how long they are processed by the published tables, and the watch over the canner from the boil to
 * the sealed jars. Pure: no clock, no threads, no input or output. Depends on the alarm life cycle, physics and units.
 */
@NullMarked
package spoonfall.canning;

import org.jspecify.annotations.NullMarked;
