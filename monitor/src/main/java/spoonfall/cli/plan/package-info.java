/** A batch planned and jars timed, from the command line. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.plan;

import org.jspecify.annotations.NullMarked;
