/** A thermometer that somebody reads: what they type becomes its readings. Depends on the probe's words only. */
@NullMarked
package spoonfall.probe.hand;

import org.jspecify.annotations.NullMarked;
