/**
 * The SQLite file itself: opened with its tables, held by one program, and what can be saved of it when it is damaged.
 * Knows nothing of what is written in it but the names of its tables and columns.
 */
@NullMarked
package spoonfall.log.store.file;

import org.jspecify.annotations.NullMarked;
