/** What lines from a wire must hold, whatever comes. */
@NullMarked
package spoonfall.probe.line;

import org.jspecify.annotations.NullMarked;
