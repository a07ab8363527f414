/**
 * Cooks drawn at random: a pan, a hob, a syrup, a thermometer and a kitchen of their own for every seed, and
 * what goes wrong in it. For scoring the monitor, so it must know nothing of it.
 */
@NullMarked
package spoonfall.lab.varied;

import org.jspecify.annotations.NullMarked;
