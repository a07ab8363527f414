package spoonfall.log.store.write;

import org.jdbi.v3.core.statement.Update;
import spoonfall.log.store.cook.Moment;

/**
 * How far a cook was watched, and when that was.
 *
 * @param aliveMillis milliseconds of the cook
 * @param at by our own clocks
 */
public record Marked(long aliveMillis, Moment at) {
    /** The statement with {@code :alive}, {@code :wall}, {@code :boot} and {@code :uptime} filled in. */
    public Update boundTo(Update statement) {
        return statement
                .bind("alive", aliveMillis)
                .bind("wall", at.wallMillis())
                .bind("boot", at.boot())
                .bind("uptime", at.uptimeMillis());
    }
}
