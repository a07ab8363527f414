@NullMarked
package spoonfall.cook.settest;

import org.jspecify.annotations.NullMarked;
