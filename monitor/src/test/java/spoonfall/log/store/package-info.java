@NullMarked
package spoonfall.log.store;

import org.jspecify.annotations.NullMarked;
