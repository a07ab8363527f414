/** Spoonfall beside a complex-event engine and another Kalman filter, on the same readings. Never distributed. */
@NullMarked
package spoonfall.bench.engine;

import org.jspecify.annotations.NullMarked;
