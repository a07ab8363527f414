/**
 * The record of all cooks on disk, for whoever writes it and for people: the recorder's thread with its journals and
 * diaries, and the log that lists, takes in and out, thins and copies. Depends on the packages below and on the log.
 */
@NullMarked
package spoonfall.log.store;

import org.jspecify.annotations.NullMarked;
