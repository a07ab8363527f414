@NullMarked
package spoonfall.cook.stage;

import org.jspecify.annotations.NullMarked;
