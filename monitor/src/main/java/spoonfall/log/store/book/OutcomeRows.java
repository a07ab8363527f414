package spoonfall.log.store.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;

/** The rows of what somebody said of a batch. A row that was damaged counts as not said. */
public final class OutcomeRows {
    private OutcomeRows() {}

    /** What was made; the jars that were counted while it was cooked, unless somebody said otherwise since. */
    public static Made made(Handle handle, long cook) {
        return handle.createQuery("SELECT " + String.format(Locale.ROOT, JARS, ":cook") + " AS jars,"
                        + " coalesce((SELECT fruit FROM made WHERE cook = :cook), '') AS fruit")
                .bind("cook", cook)
                .map((row, context) -> made(row))
                .one();
    }

    /** How many jars the cook of a column filled. */
    static final String JARS =
            "coalesce((SELECT jars FROM made WHERE cook = %1$s), (SELECT CASE WHEN json_valid(detail)"
                    + " THEN json_extract(detail, '$.jars') END FROM word WHERE cook = %1$s AND kind = 'filled' ORDER BY n DESC"
                    + " LIMIT 1))";

    static Made made(ResultSet row) throws SQLException {
        try {
            int jars = row.getInt("jars");
            OptionalInt filled = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(jars);
            return new Made(row.getString("fruit"), filled);
        } catch (IllegalArgumentException e) {
            return Made.UNKNOWN;
        }
    }

    /** How a cook came out, as far as somebody said, the day before the month. */
    public static List<Outcome> outcomes(Handle handle, long cook) {
        return handle
                .createQuery("SELECT after, firmness, taste, words FROM outcome WHERE cook = :cook ORDER BY after")
                .bind("cook", cook)
                .map((row, context) -> outcome(row))
                .list()
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    static Optional<Outcome> outcome(ResultSet row) throws SQLException {
        try {
            Set<Taste> taste = EnumSet.noneOf(Taste.class);
            for (String name : row.getString("taste").split(",", -1)) {
                if (!name.isEmpty()) {
                    taste.add(Taste.named(name));
                }
            }
            return Optional.of(new Outcome(
                    After.named(row.getString("after")),
                    Optional.ofNullable(row.getString("firmness")).map(Firmness::named),
                    taste,
                    row.getString("words")));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** One in which nothing is said goes. */
    public static void write(Handle handle, long cook, Outcome outcome, Instant now) {
        if (outcome.empty()) {
            handle.execute(
                    "DELETE FROM outcome WHERE cook = ? AND after = ?",
                    cook,
                    outcome.after().wireName());
            return;
        }
        handle.createUpdate("INSERT OR REPLACE INTO outcome (cook, after, firmness, taste, words, wall_ms)"
                        + " VALUES (:cook, :after, :firmness, :taste, :words, :wall)")
                .bind("cook", cook)
                .bind("after", outcome.after().wireName())
                .bind("firmness", outcome.set().map(Firmness::wireName).orElse(null))
                .bind("taste", outcome.taste().stream().map(Taste::wireName).collect(Collectors.joining(",")))
                .bind("words", outcome.words())
                .bind("wall", now.toEpochMilli())
                .execute();
    }

    /** Writes what was made, over what was said before. */
    public static void write(Handle handle, long cook, Made made) {
        handle.createUpdate("INSERT OR REPLACE INTO made (cook, fruit, jars) VALUES (:cook, :fruit, :jars)")
                .bind("cook", cook)
                .bind("fruit", made.fruit())
                .bind("jars", column(made.jars()))
                .execute();
    }

    private static @Nullable Integer column(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    static List<BatchOutcome> all(Handle handle) {
        return handle
                .createQuery(
                        "SELECT c.id, c.started_ms, coalesce(m.fruit, '') AS fruit, p.final_rise_c, p.water_boil_c,"
                                + " p.boil_minutes, o.* FROM outcome o JOIN cook c ON c.id = o.cook JOIN page p ON p.cook = o.cook"
                                + " LEFT JOIN made m ON m.cook = o.cook ORDER BY c.started_ms, c.id, o.after")
                .map((row, context) -> batch(row))
                .list()
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<BatchOutcome> batch(ResultSet row) throws SQLException {
        Optional<Outcome> outcome = outcome(row);
        return outcome.isEmpty()
                ? Optional.empty()
                : Optional.of(new BatchOutcome(
                        row.getLong("id"),
                        Instant.ofEpochMilli(row.getLong("started_ms")),
                        row.getString("fruit"),
                        number(row, "final_rise_c"),
                        row.getDouble("water_boil_c"),
                        number(row, "boil_minutes"),
                        outcome.get()));
    }

    /** A number that may be missing. */
    static OptionalDouble number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
