/**
 * The thermometers of a pan: how each is, what makes it true, where water boils by it, and its check in boiling water or
 * ice. Depends on {@code plan}, {@code ask}, calibrations and probes.
 */
@NullMarked
package spoonfall.kitchen.thermometer;

import org.jspecify.annotations.NullMarked;
