@NullMarked
package spoonfall.book;

import org.jspecify.annotations.NullMarked;
