package spoonfall.log.store.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.store.chunk.ChunkReader;

/** Reads cooks out of an open file, lists and deletes them. */
public final class CookStore {
    /** Cooks that came from traces are kept apart from those of a pan, which may be gone on with. */
    public static final String IMPORTED = "(imported)";

    private final Handle handle;

    /** The cooks of an open file. */
    public CookStore(Handle handle) {
        this.handle = handle;
    }

    /** What asks the file. */
    public Handle handle() {
        return handle;
    }

    /**
     * Where writing a cook goes on.
     *
     * @param key its key
     * @param readings number of the next reading
     * @param words number of the next word
     * @param events number of the next event
     */
    public record Whereabouts(String key, long readings, long words, long events) {}

    /** Every cook, the latest first. */
    public List<CookLine> list() {
        return handle.createQuery(
                        "SELECT c.*, (SELECT coalesce(sum(count), 0) FROM chunk WHERE cook = c.id) AS readings,"
                                + " (SELECT count(*) FROM event WHERE cook = c.id) AS events FROM cook c ORDER BY started_ms DESC,"
                                + " id DESC")
                .map(CookStore::line)
                .list();
    }

    private static CookLine line(ResultSet row, StatementContext context) throws SQLException {
        return new CookLine(
                row.getLong("id"),
                row.getInt("number"),
                row.getString("pan"),
                batch(row.getString("header")),
                Instant.ofEpochMilli(row.getLong("started_ms")),
                row.getLong("alive_ms"),
                row.getObject("ended_ms") != null,
                row.getLong("readings"),
                row.getLong("events"),
                row.getLong("thinned"));
    }

    private static String batch(String header) {
        try {
            return CookJson.parse(header).path("batch").asText();
        } catch (IllegalArgumentException e) {
            return "(its beginning was damaged)";
        }
    }

    /** The cook of that number; empty if there is none. */
    public Optional<StoredCook> read(long id) {
        return handle.createQuery("SELECT * FROM cook WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> cook(row))
                .findOne();
    }

    private StoredCook cook(ResultSet row) throws SQLException {
        long id = row.getLong("id");
        CookHeader header = CookJson.header(CookJson.parse(row.getString("header")));
        Moment aliveAt =
                new Moment(row.getLong("alive_wall_ms"), row.getString("alive_boot"), row.getLong("alive_uptime_ms"));
        long aliveMillis = row.getLong("alive_ms");
        long ended = row.getLong("ended_ms");
        OptionalLong endedMillis = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(ended);
        Inputs inputs = new Inputs(header.basis().probes());
        handle.createQuery("SELECT first, count, readings FROM chunk WHERE cook = :cook ORDER BY first")
                .bind("cook", id)
                .map((chunk, context) -> inputs.chunk(chunk.getLong("first"), chunk.getBytes("readings")))
                .forEach(done -> {});
        handle.createQuery("SELECT after, taken_ms, kind, detail FROM word WHERE cook = :cook ORDER BY n")
                .bind("cook", id)
                .map((word, context) -> inputs.word(
                        word.getLong("after"),
                        new CookInput.Word(
                                word.getLong("taken_ms"), word.getString("kind"), parsed(word.getString("detail")))))
                .forEach(done -> {});
        List<StoredCook.Event> events = handle.createQuery(
                        "SELECT at_ms, kind, detail FROM event WHERE cook = :cook ORDER BY n")
                .bind("cook", id)
                .map((event, context) -> new StoredCook.Event(
                        event.getLong("at_ms"), event.getString("kind"), parsed(event.getString("detail"))))
                .list();
        return new StoredCook(
                id, header, inputs.merged(), events, notes(id), aliveMillis, aliveAt, endedMillis, inputs.damaged);
    }

    /** What somebody wrote of a cook, in order. */
    List<CookNote> notes(long id) {
        return handle
                .createQuery("SELECT key, at_ms, wall_ms, text FROM note WHERE cook = :cook ORDER BY wall_ms, key")
                .bind("cook", id)
                .map((note, context) -> note(note))
                .list()
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    /** A note; empty if it was damaged. */
    private static Optional<CookNote> note(ResultSet row) throws SQLException {
        try {
            return Optional.of(new CookNote(
                    row.getString("key"),
                    row.getLong("at_ms"),
                    Instant.ofEpochMilli(row.getLong("wall_ms")),
                    row.getString("text")));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static ObjectNode parsed(String detail) {
        try {
            return CookJson.parse(detail);
        } catch (IllegalArgumentException e) {
            return CookJson.object().put("damaged", detail);
        }
    }

    /** The latest cook of a pan; empty if there is none. */
    public Optional<Long> latest(String pan) {
        return handle.createQuery("SELECT max(id) FROM cook WHERE pan = :pan HAVING count(*) > 0")
                .bind("pan", pan)
                .mapTo(Long.class)
                .findOne();
    }

    /** The greatest number that a cook of a pan has; 0 if there is none. */
    public int lastNumber(String pan) {
        return handle.createQuery("SELECT coalesce(max(number), 0) FROM cook WHERE pan = :pan")
                .bind("pan", pan)
                .mapTo(Integer.class)
                .one();
    }

    /** Where writing the cook of that number goes on. */
    public Whereabouts whereabouts(long id) {
        return handle.createQuery(
                        "SELECT key, (SELECT coalesce(max(first + count), 0) FROM chunk WHERE cook = :id) AS"
                                + " readings, (SELECT coalesce(max(n) + 1, 0) FROM word WHERE cook = :id) AS words,"
                                + " (SELECT coalesce(max(n) + 1, 0) FROM event WHERE cook = :id) AS events FROM cook WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> new Whereabouts(
                        row.getString("key"), row.getLong("readings"), row.getLong("words"), row.getLong("events")))
                .one();
    }

    /** Takes a cook out for good, in a transaction of somebody else's. */
    public void delete(Handle writing, long id) {
        writing.createUpdate("DELETE FROM cook WHERE id = :id").bind("id", id).execute();
    }

    /** Brings readings and words back into the order in which they came. */
    private static final class Inputs {
        private final List<String> probes;
        private final List<CookInput.Heard> readings = new ArrayList<>();
        private final List<Long> numbers = new ArrayList<>();
        private final List<CookInput.Word> words = new ArrayList<>();
        private final List<Long> after = new ArrayList<>();
        private int damaged;

        Inputs(List<String> probes) {
            this.probes = probes;
        }

        boolean chunk(long first, byte[] bytes) {
            try {
                long number = first;
                for (CookInput.Heard heard : ChunkReader.read(bytes, probes)) {
                    numbers.add(number++);
                    readings.add(heard);
                }
                return true;
            } catch (IllegalArgumentException e) {
                damaged++;
                return false;
            }
        }

        boolean word(long afterReading, CookInput.Word word) {
            after.add(afterReading);
            return words.add(word);
        }

        List<CookInput> merged() {
            List<CookInput> merged = new ArrayList<>(readings.size() + words.size());
            int word = 0;
            for (int i = 0; i < readings.size(); i++) {
                while (word < words.size() && after.get(word) <= numbers.get(i)) {
                    merged.add(words.get(word++));
                }
                merged.add(readings.get(i));
            }
            merged.addAll(words.subList(word, words.size()));
            return merged;
        }
    }
}
