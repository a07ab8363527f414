package spoonfall.log.store.diary;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jdbi.v3.core.Handle;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.log.store.write.Marked;
import spoonfall.log.store.write.Writer;

/** Writes a diary. */
public final class DiaryWriter implements Writer {
    private final String key;
    private final String subject;
    private final ObjectNode header;
    private long id;
    private long lines;

    /** The writer of a diary with so many lines. */
    public DiaryWriter(String key, String subject, ObjectNode header, long lines) {
        this.key = key;
        this.subject = subject;
        this.header = header;
        this.lines = lines;
    }

    @Override
    public Writer copy() {
        DiaryWriter copy = new DiaryWriter(key, subject, header, lines);
        copy.id = id;
        return copy;
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
        marked.boundTo(
                        handle.createUpdate(
                                "INSERT INTO diary (key, subject, header, alive_ms, alive_wall_ms, alive_boot, alive_uptime_ms)"
                                        + " VALUES (:key, :subject, :header, :alive, :wall, :boot, :uptime) ON CONFLICT (key) DO NOTHING"))
                .bind("key", key)
                .bind("subject", subject)
                .bind("header", CookJson.text(header))
                .execute();
        id = handle.createQuery("SELECT id FROM diary WHERE key = :key")
                .bind("key", key)
                .mapTo(Long.class)
                .one();
    }

    /** Writes the next line. */
    public void line(Handle handle, Diary.Line line) {
        handle.createUpdate("INSERT OR REPLACE INTO diary_line (diary, n, at_ms, kind, detail)"
                        + " VALUES (:diary, :n, :at, :kind, :detail)")
                .bind("diary", id)
                .bind("n", lines)
                .bind("at", line.atMillis())
                .bind("kind", line.kind())
                .bind("detail", CookJson.text(line.detail()))
                .execute();
        lines++;
    }

    @Override
    public void flush(Handle handle) {
        // every line is written as it comes
    }

    @Override
    public void mark(Handle handle, Marked marked) {
        marked.boundTo(handle.createUpdate(
                        "UPDATE diary SET alive_ms = :alive, alive_wall_ms = :wall, alive_boot = :boot,"
                                + " alive_uptime_ms = :uptime WHERE id = :diary"))
                .bind("diary", id)
                .execute();
    }
}
