@NullMarked
package spoonfall.door;

import org.jspecify.annotations.NullMarked;
