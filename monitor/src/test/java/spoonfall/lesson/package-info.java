@NullMarked
package spoonfall.lesson;

import org.jspecify.annotations.NullMarked;
