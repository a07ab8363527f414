/** Tests of what the record remembers. */
@NullMarked
package spoonfall.log.memory;

import org.jspecify.annotations.NullMarked;
