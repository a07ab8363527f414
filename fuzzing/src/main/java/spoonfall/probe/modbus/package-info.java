/** What the frames of instruments must hold, whatever comes. */
@NullMarked
package spoonfall.probe.modbus;

import org.jspecify.annotations.NullMarked;
