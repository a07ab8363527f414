/** Thermometers on serial and USB-serial ports: opening, losing and finding them. Depends on the line formats. */
@NullMarked
package spoonfall.probe.serial;

import org.jspecify.annotations.NullMarked;
