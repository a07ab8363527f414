@NullMarked
package spoonfall.typed;

import org.jspecify.annotations.NullMarked;
