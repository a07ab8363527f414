/**
 * Where somebody at a page says or asks something of a pan, a desk for each subject. Depends on {@code pan} and whatever is
 * below it.
 */
@NullMarked
package spoonfall.kitchen.desk;

import org.jspecify.annotations.NullMarked;
