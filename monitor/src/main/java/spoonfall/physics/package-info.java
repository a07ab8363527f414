/**
 * Air, water and syrup: pure functions in SI units with °C for temperatures. Depends on nothing. Formulas,
 * sources and how far they agree with published tables: docs/science.md.
 */
@NullMarked
package spoonfall.physics;

import org.jspecify.annotations.NullMarked;
