/** The command line: commands and the wiring of everything else. Nothing depends on this package. */
@NullMarked
package spoonfall.cli;

import org.jspecify.annotations.NullMarked;
