/**
 * Burners that switch on and off, known by their beat or by the shape of their dips. Depends on nothing else.
 */
@NullMarked
package spoonfall.estimate.burner;

import org.jspecify.annotations.NullMarked;
