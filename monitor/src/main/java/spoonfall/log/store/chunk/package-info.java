/** How readings are packed into few bytes without loss, and read back (docs/decisions/008-the-record.md). */
@NullMarked
package spoonfall.log.store.chunk;

import org.jspecify.annotations.NullMarked;
