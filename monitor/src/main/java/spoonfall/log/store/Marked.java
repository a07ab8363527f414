package spoonfall.log.store;

import org.jdbi.v3.core.statement.Update;

/**
 * How far a cook was watched, and when that was.
 *
 * @param aliveMillis milliseconds of the cook
 * @param at by our own clocks
 */
record Marked(long aliveMillis, Moment at) {
    /** The statement with {@code :alive}, {@code :wall}, {@code :boot} and {@code :uptime} filled in. */
    Update boundTo(Update statement) {
        return statement
                .bind("alive", aliveMillis)
                .bind("wall", at.wallMillis())
                .bind("boot", at.boot())
                .bind("uptime", at.uptimeMillis());
    }
}
