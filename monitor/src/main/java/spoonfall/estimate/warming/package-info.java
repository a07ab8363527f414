/**
 * What the way up to the boil tells of the pan before it boils: its heat, its mass, how late its thermometer is,
 * and a plan. Depends on {@code filter}.
 */
@NullMarked
package spoonfall.estimate.warming;

import org.jspecify.annotations.NullMarked;
