/** Tests of the afternoon. */
@NullMarked
package spoonfall.afternoon;

import org.jspecify.annotations.NullMarked;
