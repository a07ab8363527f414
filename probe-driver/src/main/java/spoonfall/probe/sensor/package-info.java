/**
 * What a sensor's own quantity means: ohms of platinum and of thermistors, millivolts of thermocouples. Pure
 * functions of the standards; depends on nothing.
 */
@NullMarked
package spoonfall.probe.sensor;

import org.jspecify.annotations.NullMarked;
