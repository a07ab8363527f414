@NullMarked
package spoonfall.kitchen;

import org.jspecify.annotations.NullMarked;
