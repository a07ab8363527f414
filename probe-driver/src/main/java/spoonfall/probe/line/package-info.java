/** Bytes to lines, lines to temperatures, and finding out which kind of lines a probe sends. Pure. */
@NullMarked
package spoonfall.probe.line;

import org.jspecify.annotations.NullMarked;
