/**
 * Where a boiling pan stands and when it will set: the packages below, run together for one pan. Pure. Depends
 * on them, on {@code series} and on the physics.
 */
@NullMarked
package spoonfall.estimate;

import org.jspecify.annotations.NullMarked;
