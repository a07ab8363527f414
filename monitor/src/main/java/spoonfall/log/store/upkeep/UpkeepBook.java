package spoonfall.log.store.upkeep;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;
import spoonfall.log.CookJson;

/** Where the record says what went from it: nothing goes silently. */
public final class UpkeepBook {
    private static final String WENT = "went";
    private static final String THINNED = "thinned";

    private UpkeepBook() {}

    /** Writes that something went, in the transaction in which it does. */
    public static void add(Handle handle, UpkeepLine line) {
        ObjectNode detail = CookJson.object().put("cook", line.cook());
        detail.put("startedMs", line.startedAt().toEpochMilli()).put("batch", line.batch());
        detail.put("readings", line.readings()).put("why", line.why());
        handle.createUpdate("INSERT INTO upkeep (wall_ms, kind, detail) VALUES (:wall, :kind, :detail)")
                .bind("wall", line.at().toEpochMilli())
                .bind("kind", line.whole() ? WENT : THINNED)
                .bind("detail", CookJson.text(detail))
                .execute();
    }

    /** All that went, the latest first. */
    public static List<UpkeepLine> lines(Handle handle) {
        return handle.createQuery("SELECT wall_ms, kind, detail FROM upkeep ORDER BY id DESC")
                .map((row, context) -> line(
                        Instant.ofEpochMilli(row.getLong("wall_ms")),
                        row.getString("kind").equals(WENT),
                        row.getString("detail")))
                .list();
    }

    private static UpkeepLine line(Instant at, boolean whole, String text) {
        ObjectNode detail = parsed(text);
        return new UpkeepLine(
                at,
                detail.path("cook").asLong(),
                Instant.ofEpochMilli(detail.path("startedMs").asLong()),
                detail.path("batch").asText(),
                detail.path("readings").asLong(),
                whole,
                detail.path("why").asText("(damaged)"));
    }

    private static ObjectNode parsed(String text) {
        try {
            return CookJson.parse(text);
        } catch (IllegalArgumentException e) {
            return CookJson.object();
        }
    }
}
