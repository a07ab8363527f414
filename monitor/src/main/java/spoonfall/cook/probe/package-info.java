/**
 * Whether the probe is to be believed: silent, stuck, out of the pan, wild, or at odds with another
 * (docs/decisions/016-probe-and-base.md). Depends on {@code alarm} and {@code signal}.
 */
@NullMarked
package spoonfall.cook.probe;

import org.jspecify.annotations.NullMarked;
