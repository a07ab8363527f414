/**
 * Made-up input for every parser, by Jazzer. Each target lies in the package of what it tries; this package names them,
 * cuts the input and says what was broken.
 */
@NullMarked
package spoonfall.fuzz;

import org.jspecify.annotations.NullMarked;
