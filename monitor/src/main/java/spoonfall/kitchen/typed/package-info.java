/**
 * What somebody typed: a reading of a thermometer that speaks only to them, or where water boils. Depends on {@code ask}.
 */
@NullMarked
package spoonfall.kitchen.typed;

import org.jspecify.annotations.NullMarked;
