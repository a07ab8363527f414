/**
 * The contract between a thermometer and whoever reads it: {@link spoonfall.probe.Probe}, what it
 * reports and how good each reading is. Depends on nothing; knows nothing of cooking.
 */
@NullMarked
package spoonfall.probe;

import org.jspecify.annotations.NullMarked;
