package spoonfall.log.store.write;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jdbi.v3.core.Handle;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.store.chunk.ChunkWriter;
import spoonfall.log.store.cook.CookStore;

/** Writes the cook of one pan. */
public final class PanWriter implements Writer {
    private final String key;
    private final CookHeader header;
    private final List<String> probes;
    private long id;
    private ChunkWriter chunk;
    private long readings;
    private long words;
    private long events;
    private boolean chunkChanged;

    /** The writer of a cook that is in no file yet. */
    public PanWriter(String key, CookHeader header) {
        this.key = key;
        this.header = header;
        probes = header.basis().probes();
        chunk = new ChunkWriter(probes.size());
    }

    /** The writer of a cook that is in the file already, with so much in it. */
    public static PanWriter resuming(CookStore.Whereabouts at, CookHeader header) {
        PanWriter writer = new PanWriter(at.key(), header);
        writer.readings = at.readings();
        writer.words = at.words();
        writer.events = at.events();
        return writer;
    }

    @Override
    public PanWriter copy() {
        PanWriter copy = new PanWriter(key, header);
        copy.id = id;
        copy.chunk = chunk.copy();
        copy.readings = readings;
        copy.words = words;
        copy.events = events;
        return copy;
    }

    /** Where the cook is kept; 0 before it was begun. */
    public long id() {
        return id;
    }

    @Override
    public void fileChanged() {
        id = 0;
    }

    @Override
    public void begin(Handle handle, Marked marked) {
        if (id != 0) {
            return;
        }
        marked.boundTo(handle.createUpdate(
                        "INSERT INTO cook (key, pan, number, started_ms, header, alive_ms, alive_wall_ms, alive_boot,"
                                + " alive_uptime_ms) VALUES (:key, :pan, :number, :started, :header, :alive, :wall, :boot, :uptime)"
                                + " ON CONFLICT (key) DO NOTHING"))
                .bind("key", key)
                .bind("pan", header.pan())
                .bind("number", header.number())
                .bind("started", header.startedAt().toEpochMilli())
                .bind("header", CookJson.text(CookJson.header(header)))
                .execute();
        id = handle.createQuery("SELECT id FROM cook WHERE key = :key")
                .bind("key", key)
                .mapTo(Long.class)
                .one();
    }

    /** Writes a word, or takes a reading for the next chunk. */
    public void input(Handle handle, CookInput input) {
        if (input instanceof CookInput.Heard heard) {
            hear(handle, heard);
        } else if (input instanceof CookInput.Word word) {
            handle.createUpdate("INSERT OR REPLACE INTO word (cook, n, after, taken_ms, kind, detail)"
                            + " VALUES (:cook, :n, :after, :taken, :kind, :detail)")
                    .bind("cook", id)
                    .bind("n", words)
                    .bind("after", readings)
                    .bind("taken", word.takenMillis())
                    .bind("kind", word.kind())
                    .bind("detail", CookJson.text(word.detail()))
                    .execute();
            words++;
        }
    }

    private void hear(Handle handle, CookInput.Heard heard) {
        if (chunk.full(heard.takenMillis())) {
            flush(handle);
            chunk = new ChunkWriter(probes.size());
        }
        chunk.add(probes.indexOf(heard.probe()), heard);
        chunkChanged = true;
        readings++;
    }

    /** Writes the next event. */
    public void event(Handle handle, long atMillis, String kind, ObjectNode detail) {
        handle.createUpdate("INSERT OR REPLACE INTO event (cook, n, at_ms, kind, detail)"
                        + " VALUES (:cook, :n, :at, :kind, :detail)")
                .bind("cook", id)
                .bind("n", events)
                .bind("at", atMillis)
                .bind("kind", kind)
                .bind("detail", CookJson.text(detail))
                .execute();
        events++;
    }

    /** Writes a note. */
    public void note(Handle handle, CookNote note) {
        NoteRow.insert(handle, id, note);
    }

    /** Writes the chunk that is not full yet, over what was written of it before. */
    @Override
    public void flush(Handle handle) {
        if (!chunkChanged) {
            return;
        }
        chunkChanged = false;
        handle.createUpdate("INSERT OR REPLACE INTO chunk (cook, first, count, readings)"
                        + " VALUES (:cook, :first, :count, :readings)")
                .bind("cook", id)
                .bind("first", readings - chunk.count())
                .bind("count", chunk.count())
                .bind("readings", chunk.toBytes())
                .execute();
    }

    @Override
    public void mark(Handle handle, Marked marked) {
        marked.boundTo(handle.createUpdate(
                        "UPDATE cook SET alive_ms = :alive, alive_wall_ms = :wall, alive_boot = :boot,"
                                + " alive_uptime_ms = :uptime WHERE id = :cook"))
                .bind("cook", id)
                .execute();
    }

    /** Writes that the cook is over. */
    public void end(Handle handle, long atMillis) {
        handle.createUpdate("UPDATE cook SET ended_ms = :ended WHERE id = :cook")
                .bind("ended", atMillis)
                .bind("cook", id)
                .execute();
    }
}
