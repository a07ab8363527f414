/** Cooks simulated and scored, and the physics checked, from the command line. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.lab;

import org.jspecify.annotations.NullMarked;
