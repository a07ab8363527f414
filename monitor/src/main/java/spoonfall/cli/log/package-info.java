/**
 * The record from the command line: {@code log} with its parts, and {@code backup}. Depends on {@code option} and {@code
 * learn}.
 */
@NullMarked
package spoonfall.cli.log;

import org.jspecify.annotations.NullMarked;
