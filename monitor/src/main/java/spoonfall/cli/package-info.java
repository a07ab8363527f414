/** The command line: finds the command. Depends on the packages of commands below; nothing depends on this one. */
@NullMarked
package spoonfall.cli;

import org.jspecify.annotations.NullMarked;
