@NullMarked
package spoonfall.cook.watch;

import org.jspecify.annotations.NullMarked;
