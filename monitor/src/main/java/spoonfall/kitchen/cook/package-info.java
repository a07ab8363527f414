/**
 * The cook that is in a pan: its monitor and record, what is written down of it and told of it, and what is said of its alarms,
 * its batch and its notes. Depends on {@code told}, {@code thermometer}, {@code plan} and {@code typed}.
 */
@NullMarked
package spoonfall.kitchen.cook;

import org.jspecify.annotations.NullMarked;
