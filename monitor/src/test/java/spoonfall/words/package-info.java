@NullMarked
package spoonfall.words;

import org.jspecify.annotations.NullMarked;
