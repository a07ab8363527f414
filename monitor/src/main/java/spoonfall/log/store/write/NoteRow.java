package spoonfall.log.store.write;

import org.jdbi.v3.core.Handle;
import spoonfall.log.CookNote;

/** Writes one note of a cook; one that is there already stays as it is. */
public final class NoteRow {
    private NoteRow() {}

    /** Writes it, in a transaction of somebody else's. */
    public static void insert(Handle handle, long cook, CookNote note) {
        handle.createUpdate("INSERT OR IGNORE INTO note (cook, key, at_ms, wall_ms, text)"
                        + " VALUES (:cook, :key, :at, :wall, :text)")
                .bind("cook", cook)
                .bind("key", note.key())
                .bind("at", note.atMillis())
                .bind("wall", note.writtenAt().toEpochMilli())
                .bind("text", note.text())
                .execute();
    }
}
