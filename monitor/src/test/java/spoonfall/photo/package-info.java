@NullMarked
package spoonfall.photo;

import org.jspecify.annotations.NullMarked;
