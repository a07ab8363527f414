@NullMarked
package spoonfall.log;

import org.jspecify.annotations.NullMarked;
