/** The record from the command line: {@code log} with its parts, and {@code backup}. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.log;

import org.jspecify.annotations.NullMarked;
