/**
 * The Kalman filters: one of a pan, a bank of three for heat that is steady, drifts or is being changed, the
 * syrup's curve that they see through, and what they foresee. Depends on {@code series} and the physics.
 */
@NullMarked
package spoonfall.estimate.filter;

import org.jspecify.annotations.NullMarked;
