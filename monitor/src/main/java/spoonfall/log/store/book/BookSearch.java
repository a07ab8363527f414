package spoonfall.log.store.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import spoonfall.book.Firmness;

/** Looks cooks up in the batch book. */
final class BookSearch {
    private static final String BATCH =
            "coalesce(p.batch, CASE WHEN json_valid(c.header) THEN json_extract(c.header, '$.batch') END, '')";

    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> values = new LinkedHashMap<>();

    private BookSearch(BookQuery query) {
        query.from().ifPresent(from -> where("c.started_ms >= :from", "from", from.toEpochMilli()));
        query.before().ifPresent(before -> where("c.started_ms < :before", "before", before.toEpochMilli()));
        if (!query.fruit().isBlank()) {
            where(
                    "c.id IN (SELECT cook FROM made WHERE fruit = :fruit COLLATE NOCASE)",
                    "fruit",
                    query.fruit().strip());
        }
        query.set()
                .map(Firmness::wireName)
                .ifPresent(set -> where("c.id IN (SELECT cook FROM outcome WHERE firmness = :set)", "set", set));
        if (!query.text().isBlank()) {
            String pattern =
                    query.text().strip().replace("!", "!!").replace("%", "!%").replace("_", "!_");
            where(
                    "(" + BATCH + " LIKE :text ESCAPE '!' OR c.pan LIKE :text ESCAPE '!'"
                            + " OR coalesce(p.kitchen, '') LIKE :text ESCAPE '!'"
                            + " OR c.id IN (SELECT cook FROM made WHERE fruit LIKE :text ESCAPE '!')"
                            + " OR c.id IN (SELECT cook FROM note WHERE text LIKE :text ESCAPE '!')"
                            + " OR c.id IN (SELECT cook FROM outcome WHERE words LIKE :text ESCAPE '!'"
                            + " OR taste LIKE :text ESCAPE '!' OR firmness LIKE :text ESCAPE '!'))",
                    "text",
                    "%" + pattern + "%");
        }
    }

    private void where(String condition, String name, Object value) {
        conditions.add(condition);
        values.put(name, value);
    }

    static BookList list(Handle handle, BookQuery query) {
        BookSearch search = new BookSearch(query);
        List<Long> ids = search.ids(handle);
        int from = Math.min(ids.size(), query.page() * BookQuery.PAGE_SIZE);
        int to = Math.min(ids.size(), from + BookQuery.PAGE_SIZE);
        List<BookLine> lines =
                ids.subList(from, to).stream().map(id -> line(handle, id)).toList();
        List<String> fruits = handle.createQuery(
                        "SELECT DISTINCT fruit FROM made WHERE fruit <> '' ORDER BY fruit COLLATE NOCASE")
                .mapTo(String.class)
                .list();
        return new BookList(lines, ids.size(), fruits);
    }

    /** A number is eight bytes: all of them are quicker found than counted and cut. */
    private List<Long> ids(Handle handle) {
        String where = conditions.isEmpty() ? "" : " WHERE " + String.join(" AND ", conditions);
        boolean pages = where.contains("p.");
        return handle.createQuery("SELECT c.id FROM cook c" + (pages ? " LEFT JOIN page p ON p.cook = c.id" : "")
                        + where + " ORDER BY c.started_ms DESC, c.id DESC")
                .bindMap(values)
                .mapTo(Long.class)
                .list();
    }

    private static BookLine line(Handle handle, long id) {
        return handle.createQuery("SELECT c.id, c.started_ms, c.pan, c.alive_ms, c.ended_ms, " + BATCH + " AS batch,"
                        + " p.rise_c, p.final_rise_c, p.boil_minutes,"
                        + " (SELECT count(*) FROM note WHERE cook = c.id) AS notes,"
                        + " (SELECT count(*) FROM photo WHERE cook = c.id) AS photos, "
                        + String.format(Locale.ROOT, OutcomeRows.JARS, "c.id")
                        + " AS jars, coalesce((SELECT fruit FROM made WHERE cook = c.id), '') AS fruit"
                        + " FROM cook c LEFT JOIN page p ON p.cook = c.id WHERE c.id = :id")
                .bind("id", id)
                .map((row, context) -> line(handle, row))
                .one();
    }

    private static BookLine line(Handle handle, ResultSet row) throws SQLException {
        long id = row.getLong("id");
        return new BookLine(
                id,
                Instant.ofEpochMilli(row.getLong("started_ms")),
                row.getString("pan"),
                row.getString("batch"),
                OutcomeRows.made(row),
                OutcomeRows.number(row, "rise_c"),
                OutcomeRows.number(row, "final_rise_c"),
                OutcomeRows.number(row, "boil_minutes"),
                row.getLong("alive_ms"),
                row.getObject("ended_ms") != null,
                OutcomeRows.outcomes(handle, id),
                row.getInt("notes"),
                row.getInt("photos"));
    }
}
