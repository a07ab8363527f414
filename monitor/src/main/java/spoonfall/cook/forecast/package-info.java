/**
 * When the window and the gel point will be there, from the estimate, and where the pan was due by what was
 * known before. Depends on {@code signal} and {@code spoonfall.estimate}.
 */
@NullMarked
package spoonfall.cook.forecast;

import org.jspecify.annotations.NullMarked;
