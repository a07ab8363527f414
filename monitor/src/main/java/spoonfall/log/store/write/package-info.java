/** How a cook is written, step by step, so that a step may be written again. Depends on {@code chunk} and {@code cook}. */
@NullMarked
package spoonfall.log.store.write;

import org.jspecify.annotations.NullMarked;
