@NullMarked
package spoonfall.settest;

import org.jspecify.annotations.NullMarked;
