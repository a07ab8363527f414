@NullMarked
package spoonfall.cook.pan;

import org.jspecify.annotations.NullMarked;
