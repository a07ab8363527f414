@NullMarked
package spoonfall.log.store.chunk;

import org.jspecify.annotations.NullMarked;
