@NullMarked
package spoonfall.log.store.book;

import org.jspecify.annotations.NullMarked;
