@NullMarked
package spoonfall.cook.signal;

import org.jspecify.annotations.NullMarked;
