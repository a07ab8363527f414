/**
 * Whether a pan that should climb stands, and whether one that stood climbs again
 * (docs/decisions/014-stalls.md). Depends on {@code points} and {@code filter}.
 */
@NullMarked
package spoonfall.estimate.standing;

import org.jspecify.annotations.NullMarked;
