@NullMarked
package spoonfall.probe.serial;

import org.jspecify.annotations.NullMarked;
