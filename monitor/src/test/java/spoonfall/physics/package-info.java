@NullMarked
package spoonfall.physics;

import org.jspecify.annotations.NullMarked;
