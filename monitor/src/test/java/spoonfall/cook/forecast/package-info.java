@NullMarked
package spoonfall.cook.forecast;

import org.jspecify.annotations.NullMarked;
