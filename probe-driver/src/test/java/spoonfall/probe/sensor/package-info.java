@NullMarked
package spoonfall.probe.sensor;

import org.jspecify.annotations.NullMarked;
