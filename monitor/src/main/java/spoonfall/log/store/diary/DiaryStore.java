package spoonfall.log.store.diary;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.log.store.cook.Moment;

/** Reads diaries out of an open file. */
public final class DiaryStore {
    private static final Logger LOG = LoggerFactory.getLogger(DiaryStore.class);

    private final Handle handle;

    /** The diaries of an open file. */
    public DiaryStore(Handle handle) {
        this.handle = handle;
    }

    /** A diary as the file has it. */
    public record Stored(long id, ObjectNode header, List<Diary.Line> lines, long aliveMillis, Moment aliveAt) {
        /** The same for whoever goes on with it. */
        public Diary.Left left(Moment now) {
            long latest = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).atMillis();
            return new Diary.Left(id, header, lines, Math.max(aliveMillis, latest), now.since(aliveAt));
        }
    }

    /** The newest of a subject; empty if there is none or what is there cannot be read. */
    public Optional<Stored> newest(String subject) {
        try {
            return handle.createQuery("SELECT * FROM diary WHERE subject = :subject ORDER BY id DESC LIMIT 1")
                    .bind("subject", subject)
                    .map((row, context) -> stored(row))
                    .findOne();
        } catch (IllegalArgumentException e) {
            LOG.warn("what was written of \"{}\" cannot be read ({}); it begins anew", subject, e.getMessage());
            return Optional.empty();
        }
    }

    private Stored stored(ResultSet row) throws SQLException {
        long id = row.getLong("id");
        Moment at =
                new Moment(row.getLong("alive_wall_ms"), row.getString("alive_boot"), row.getLong("alive_uptime_ms"));
        return new Stored(id, CookJson.parse(row.getString("header")), lines(id), row.getLong("alive_ms"), at);
    }

    private List<Diary.Line> lines(long id) {
        return handle.createQuery("SELECT at_ms, kind, detail FROM diary_line WHERE diary = :diary ORDER BY n")
                .bind("diary", id)
                .map((line, context) -> new Diary.Line(
                        line.getLong("at_ms"), line.getString("kind"), CookJson.parse(line.getString("detail"))))
                .list();
    }

    /** The key of the diary of that number. */
    public String key(long id) {
        return handle.createQuery("SELECT key FROM diary WHERE id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .one();
    }
}
