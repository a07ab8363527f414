/** A cook as the record keeps it: read back, listed, and as a trace. Depends on {@code chunk}. */
@NullMarked
package spoonfall.log.store.cook;

import org.jspecify.annotations.NullMarked;
