/** The calls of the batch book: cooks, photos, papers, lessons and what they teach. Depends on {@code live} and {@code wire}. */
@NullMarked
package spoonfall.web.book;

import org.jspecify.annotations.NullMarked;
