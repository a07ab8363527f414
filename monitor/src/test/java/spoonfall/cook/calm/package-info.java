@NullMarked
package spoonfall.cook.calm;

import org.jspecify.annotations.NullMarked;
