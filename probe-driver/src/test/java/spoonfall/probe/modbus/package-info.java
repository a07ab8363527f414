@NullMarked
package spoonfall.probe.modbus;

import org.jspecify.annotations.NullMarked;
