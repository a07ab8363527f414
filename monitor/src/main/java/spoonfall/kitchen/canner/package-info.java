/**
 * The canner: its thermometer, the watch over filled jars, and their diary. Depends on {@code ask}, {@code clock} and
 * {@code thermometer}; knows nothing of pans.
 */
@NullMarked
package spoonfall.kitchen.canner;

import org.jspecify.annotations.NullMarked;
