/**
 * Where a boiling pan stands and when it will set: a bank of extended Kalman filters on the ratio of all mass to
 * solids, seen through the syrup's curve. Pure. Depends on the physics only.
 */
@NullMarked
package spoonfall.estimate;

import org.jspecify.annotations.NullMarked;
