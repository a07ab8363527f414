@NullMarked
package spoonfall.calibration;

import org.jspecify.annotations.NullMarked;
