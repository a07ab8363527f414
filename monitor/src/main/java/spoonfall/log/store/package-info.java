/**
 * The record of all cooks on disk: an SQLite file, the thread that writes it, and what happens when that cannot be
 * done. Depends on the log.
 */
@NullMarked
package spoonfall.log.store;

import org.jspecify.annotations.NullMarked;
