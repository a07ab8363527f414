/** Instruments that speak Modbus RTU on a serial line. The frames are pure; the probe asks again and again. */
@NullMarked
package spoonfall.probe.modbus;

import org.jspecify.annotations.NullMarked;
