/** The batch book out of the record: lists, pages, what somebody said, photos. Depends on {@code file} and {@code cook}. */
@NullMarked
package spoonfall.log.store.book;

import org.jspecify.annotations.NullMarked;
