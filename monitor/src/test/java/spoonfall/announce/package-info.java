@NullMarked
package spoonfall.announce;

import org.jspecify.annotations.NullMarked;
