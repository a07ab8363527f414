/** Instruments that answer SCPI queries (SCPI-99 on IEEE 488.2) over a serial line. */
@NullMarked
package spoonfall.probe.scpi;

import org.jspecify.annotations.NullMarked;
