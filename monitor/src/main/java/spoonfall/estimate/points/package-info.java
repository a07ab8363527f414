/**
 * Readings gathered into points five seconds apart: how noisy and how coarse they are, and which are astray.
 * Depends on {@code filter}.
 */
@NullMarked
package spoonfall.estimate.points;

import org.jspecify.annotations.NullMarked;
