package spoonfall.log.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jdbi.v3.core.JdbiException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookBasis;
import spoonfall.log.CookEventJson;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.TraceReplay;
import spoonfall.probe.Quality;
import spoonfall.probe.trace.Trace;

/**
 * The record of all cooks for people: lists, shows, takes in and out, thins and copies. May be used while the service
 * writes the same file. What cannot be done is an {@link IllegalArgumentException} that says why and the way out.
 */
public final class CookLog implements AutoCloseable {
    /** Cooks that came from traces are kept apart from those of a pan, which may be gone on with. */
    private static final String IMPORTED = "(imported)";

    private static final Logger LOG = LoggerFactory.getLogger(CookLog.class);

    private final Path file;
    private final Database database;
    private final CookStore store;

    private CookLog(Path file, Database database) {
        this.file = file;
        this.database = database;
        store = new CookStore(database.handle());
    }

    /** Opens the record for reading and tidying. */
    public static CookLog open(Path file) {
        if (!Files.exists(file)) {
            throw new IllegalArgumentException(
                    "nothing was recorded yet: there is no " + file + " (\"spoonfall serve\" makes it)");
        }
        return openOrMake(file);
    }

    /** Opens the record, making it if it is not there. */
    public static CookLog openOrMake(Path file) {
        try {
            return new CookLog(file, Database.open(file));
        } catch (SQLException | RuntimeException e) {
            throw cannot(file, e);
        }
    }

    private static IllegalArgumentException cannot(Path file, Exception e) {
        Unrecorded words = Fault.of(e).words(file);
        return new IllegalArgumentException("the record cannot be used: " + words.why(), e);
    }

    /** Every cook, the latest first. */
    public List<CookLine> list() {
        return store.list();
    }

    /** The cook of that number in the list. */
    public StoredCook cook(long id) {
        try {
            return store.read(id)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "there is no cook " + id + "; \"spoonfall log list\" lists them"));
        } catch (JdbiException e) {
            throw cannot(file, e);
        }
    }

    /**
     * Takes a trace in as a cook that is over.
     *
     * @return where it is kept
     */
    public long take(Trace trace, CookSettings settings) {
        CookBasis basis =
                new CookBasis(settings, List.of(ProbeTrust.unchecked("pan")), settings.waterBoil(), Optional.empty());
        Instant startedAt = trace.info().startedAt().orElseGet(Instant::now);
        String key = UUID.randomUUID().toString();
        return database.handle().inTransaction(handle -> {
            int number = store.lastNumber(IMPORTED) + 1;
            PanWriter writer = new PanWriter(
                    key,
                    new CookHeader(
                            number,
                            IMPORTED,
                            "",
                            trace.info().title(),
                            trace.info().provenance(),
                            1,
                            startedAt,
                            settings,
                            basis,
                            Map.of()));
            long lastMillis = Math.round(trace.lastS() * 1000);
            Marked marked = new Marked(lastMillis, Moment.now());
            writer.begin(handle, marked);
            TraceReplay replay = new TraceReplay(trace, settings);
            for (int row = 0; replay.hasNext(); row++) {
                long millis = Math.round(trace.elapsedS(row) * 1000);
                OptionalDouble shownC = trace.temperatureC(row);
                Quality quality = shownC.isPresent() ? Quality.GOOD : Quality.NO_NUMBER;
                writer.input(handle, new CookInput.Heard("pan", millis, millis, shownC, quality));
                for (CookEvent event : replay.next()) {
                    if (!CookEventJson.kind(event).isEmpty()) {
                        long atMillis = Math.round(event.t() * 1000);
                        writer.event(handle, atMillis, CookEventJson.kind(event), CookEventJson.detail(event));
                    }
                }
            }
            writer.flush(handle);
            writer.end(handle, lastMillis);
            return writer.id();
        });
    }

    /** Writes a word into a cook that is over, at its end. Nothing in the cook goes by it. */
    public void say(long id, String kind, ObjectNode detail) {
        refuseRunning(id);
        StoredCook cook = cook(id);
        database.handle().useTransaction(handle -> {
            PanWriter writer = PanWriter.resuming(store.whereabouts(id), cook.header());
            writer.begin(handle, new Marked(cook.aliveMillis(), cook.aliveAt()));
            writer.input(handle, new CookInput.Word(cook.latestMillis(), kind, detail));
        });
    }

    /** Takes a cook out for good. */
    public void delete(long id) {
        refuseRunning(id);
        if (!store.delete(id)) {
            throw new IllegalArgumentException("there is no cook " + id + "; \"spoonfall log list\" lists them");
        }
    }

    private void refuseRunning(long id) {
        StoredCook cook = cook(id);
        boolean last = store.latest(cook.header().pan()).equals(Optional.of(id));
        if (last && cook.endedMillis().isEmpty()) {
            try (FolderLock lock = FolderLock.take(file)) {
                LOG.debug("nobody writes the record: {}", lock.held());
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(
                        "cook " + id + " is still being recorded; start a new cook on the page first", e);
            }
        }
    }

    /**
     * Keeps one reading of each thermometer in so many seconds of the cooks that began before an instant and are over.
     * Words and events stay.
     *
     * @return how many readings were taken out
     */
    public long thin(Instant before, Duration every) {
        long thinned = 0;
        for (CookLine line : list()) {
            if (line.startedAt().isBefore(before) && line.ended()) {
                thinned += thin(line.id(), every);
            }
        }
        return thinned;
    }

    private long thin(long id, Duration every) {
        StoredCook cook = cook(id);
        List<CookInput> kept = new ArrayList<>();
        Map<String, Long> latest = new HashMap<>();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard) {
                Long last = latest.get(heard.probe());
                if (last != null && heard.takenMillis() - last < every.toMillis()) {
                    continue;
                }
                latest.put(heard.probe(), heard.takenMillis());
            }
            kept.add(input);
        }
        int out = cook.inputs().size() - kept.size();
        if (out == 0 || cook.damaged() > 0) {
            return 0; // what is left of a damaged cook is not made less
        }
        String key = store.whereabouts(id).key();
        database.handle().useTransaction(handle -> {
            handle.execute("DELETE FROM chunk WHERE cook = ?", id);
            handle.execute("DELETE FROM word WHERE cook = ?", id);
            PanWriter writer = new PanWriter(key, cook.header());
            writer.begin(handle, new Marked(cook.aliveMillis(), cook.aliveAt()));
            kept.forEach(input -> writer.input(handle, input));
            writer.flush(handle);
            handle.execute("UPDATE cook SET thinned = thinned + ? WHERE id = ?", out, id);
        });
        return out;
    }

    /** Gives back the room that deleted things took. */
    public void compact() {
        database.handle().execute("VACUUM");
    }

    /** Writes a copy of all of it into a file that is not there yet, whole even while the service writes. */
    public void backup(Path copy) {
        if (Files.exists(copy)) {
            throw new IllegalArgumentException(copy + " is there already; name a file that is not");
        }
        Path folder = copy.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IllegalArgumentException("there is no folder " + folder + "; make it first");
        }
        try {
            database.handle().execute("VACUUM INTO ?", copy.toString());
        } catch (JdbiException e) {
            throw new IllegalArgumentException(
                    copy + " cannot be written: " + Fault.of(e).words(copy).why(), e);
        }
    }

    @Override
    public void close() {
        database.close();
    }
}
