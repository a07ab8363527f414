package spoonfall.log.store.book;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.book.CookMarks;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.cook.StoredTrace;
import spoonfall.probe.trace.Trace;

/** Works out of a cook's readings what the book's list needs of it, once, when the cook is over. */
final class BookDigest {
    /** Of the working out; a greater one works everything out again. */
    static final int VERSION = 1;

    private static final Logger LOG = LoggerFactory.getLogger(BookDigest.class);

    private BookDigest() {}

    /** The climb of a cook, above where water boiled by what was known at its end. */
    static RiseLine line(StoredCook cook, CookSettings settings) {
        Trace trace = StoredTrace.of(cook);
        double waterBoilC = settings.waterBoil().temperatureC();
        double[] times = new double[trace.size()];
        double[] rises = new double[trace.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = trace.elapsedS(i);
            rises[i] = trace.temperatureC(i).orElse(waterBoilC) - waterBoilC;
        }
        return new RiseLine(times, rises);
    }

    /** The moments of a cook. */
    static CookMarks marks(StoredCook cook, RiseLine line, CookSettings settings) {
        OptionalDouble boilS = cook.events().stream()
                .filter(event -> stage(event).equals("rolling-boil"))
                .mapToDouble(event -> event.atMillis() / 1000.0)
                .findFirst();
        OptionalDouble offS = OptionalDouble.empty();
        for (StoredCook.Event event : cook.events()) {
            if (event.kind().equals("stage")) {
                boolean off = stage(event).equals("off-the-heat");
                offS = off ? OptionalDouble.of(event.atMillis() / 1000.0) : OptionalDouble.empty();
            }
        }
        return CookMarks.of(line, boilS, offS, settings.riseC());
    }

    private static String stage(StoredCook.Event event) {
        return event.kind().equals("stage") ? event.detail().path("stage").asText() : "";
    }

    /** Works out so many cooks that are over, or that nobody watches any more, and were not worked out yet, the latest first. */
    static void catchUp(Handle handle, Instant now, int most) {
        List<Long> due = handle.createQuery("SELECT c.id FROM cook c LEFT JOIN page p ON p.cook = c.id"
                        + " AND p.version = :version AND p.alive_ms = c.alive_ms WHERE p.cook IS NULL"
                        + " AND (c.ended_ms IS NOT NULL OR c.alive_wall_ms < :left) ORDER BY c.id DESC LIMIT :most")
                .bind("version", VERSION)
                .bind("left", now.minus(StoredCook.LEFT_AFTER).toEpochMilli())
                .bind("most", most)
                .mapTo(Long.class)
                .list();
        for (long id : due) {
            try {
                new CookStore(handle).read(id).ifPresent(cook -> write(handle, cook));
            } catch (IllegalArgumentException e) {
                LOG.debug("cook {} cannot be worked out", id, e);
            }
        }
    }

    private static void write(Handle handle, StoredCook cook) {
        CookSettings settings = StoredTrace.settings(cook);
        CookMarks marks = marks(cook, line(cook, settings), settings);
        handle.createUpdate(
                        "INSERT OR REPLACE INTO page (cook, version, alive_ms, batch, kitchen, water_boil_c, rise_c, sugar_s,"
                                + " boil_s, gel_s, off_s, final_rise_c, boil_minutes) VALUES (:cook, :version, :alive, :batch, :kitchen,"
                                + " :water, :rise, :sugar, :boil, :gel, :off, :final, :minutes)")
                .bind("cook", cook.id())
                .bind("version", VERSION)
                .bind("alive", cook.aliveMillis())
                .bind("batch", cook.header().batch())
                .bind("kitchen", cook.header().kitchen())
                .bind("water", settings.waterBoil().temperatureC())
                .bind("rise", settings.riseC())
                .bind("sugar", marks.sugarS())
                .bind("boil", column(marks.boilS()))
                .bind("gel", column(marks.gelS()))
                .bind("off", column(marks.offS()))
                .bind("final", column(marks.finalRiseC()))
                .bind("minutes", column(marks.boilMinutes()))
                .execute();
    }

    private static @Nullable Double column(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
