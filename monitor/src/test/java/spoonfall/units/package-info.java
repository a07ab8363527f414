@NullMarked
package spoonfall.units;

import org.jspecify.annotations.NullMarked;
