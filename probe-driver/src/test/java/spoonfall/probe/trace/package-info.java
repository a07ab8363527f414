@NullMarked
package spoonfall.probe.trace;

import org.jspecify.annotations.NullMarked;
