/** How a diary is written and read back (docs/decisions/010-diaries.md). Depends on {@code write} and {@code cook}. */
@NullMarked
package spoonfall.log.store.diary;

import org.jspecify.annotations.NullMarked;
