@NullMarked
package spoonfall.probe.line;

import org.jspecify.annotations.NullMarked;
