@NullMarked
package spoonfall.food;

import org.jspecify.annotations.NullMarked;
