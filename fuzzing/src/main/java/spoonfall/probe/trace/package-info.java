/** What trace files must hold, whatever comes. */
@NullMarked
package spoonfall.probe.trace;

import org.jspecify.annotations.NullMarked;
