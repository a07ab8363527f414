@NullMarked
package spoonfall.paper;

import org.jspecify.annotations.NullMarked;
