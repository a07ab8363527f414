/**
 * Which stage the pan is in, without being told, and whether its sugar is going in. Depends on {@code signal}.
 */
@NullMarked
package spoonfall.cook.stage;

import org.jspecify.annotations.NullMarked;
