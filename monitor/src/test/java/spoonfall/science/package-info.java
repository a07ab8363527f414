@NullMarked
package spoonfall.science;

import org.jspecify.annotations.NullMarked;
