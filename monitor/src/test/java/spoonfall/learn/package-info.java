/** Tests of what is learnt from the batches. */
@NullMarked
package spoonfall.learn;

import org.jspecify.annotations.NullMarked;
