/**
 * Old cooks: packed smaller, thinned out or let go, and the book of what went. Depends on {@code cook}, {@code write} and
 * {@code chunk}.
 */
@NullMarked
package spoonfall.log.store.upkeep;

import org.jspecify.annotations.NullMarked;
