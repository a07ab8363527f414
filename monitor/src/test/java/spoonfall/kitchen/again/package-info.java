@NullMarked
package spoonfall.kitchen.again;

import org.jspecify.annotations.NullMarked;
