@NullMarked
package spoonfall.cook;

import org.jspecify.annotations.NullMarked;
