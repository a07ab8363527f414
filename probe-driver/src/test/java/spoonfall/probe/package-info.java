@NullMarked
package spoonfall.probe;

import org.jspecify.annotations.NullMarked;
