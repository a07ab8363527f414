@NullMarked
package spoonfall.canning;

import org.jspecify.annotations.NullMarked;
