@NullMarked
package spoonfall.cook.probe;

import org.jspecify.annotations.NullMarked;
