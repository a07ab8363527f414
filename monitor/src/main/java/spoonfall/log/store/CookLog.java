package spoonfall.log.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
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
import spoonfall.log.CookNote;
import spoonfall.log.TraceReplay;
import spoonfall.log.store.book.OutcomeRows;
import spoonfall.log.store.book.PhotoRows;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.file.Fault;
import spoonfall.log.store.file.FolderLock;
import spoonfall.log.store.upkeep.Thinning;
import spoonfall.log.store.upkeep.UpkeepBook;
import spoonfall.log.store.upkeep.UpkeepLine;
import spoonfall.log.store.write.Marked;
import spoonfall.log.store.write.NoteRow;
import spoonfall.log.store.write.PanWriter;
import spoonfall.probe.Quality;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/**
 * The record of all cooks for people: lists, shows, takes in and out, thins and copies. May be used while the service
 * writes the same file. What cannot be done is an {@link IllegalArgumentException} that says why and the way out.
 */
public final class CookLog implements AutoCloseable {
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
            int number = store.lastNumber(CookStore.IMPORTED) + 1;
            PanWriter writer = new PanWriter(
                    key,
                    new CookHeader(
                            number,
                            CookStore.IMPORTED,
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
            takeNotes(handle, writer, trace.info().notes());
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

    /**
     * Takes a cook in that {@link WholeCook} wrote, as a cook that is over.
     *
     * @return where it is kept
     */
    public long take(WholeCook cook) {
        return database.handle().inTransaction(handle -> cook.write(handle, store.lastNumber(CookStore.IMPORTED) + 1));
    }

    /** A cook of that number, to be taken elsewhere with all that was said of it. */
    public WholeCook whole(long id) {
        return WholeCook.of(
                cook(id),
                OutcomeRows.made(database.handle(), id),
                OutcomeRows.outcomes(database.handle(), id),
                PhotoRows.whole(database.handle(), id));
    }

    private static void takeNotes(Handle handle, PanWriter writer, List<TraceInfo.Note> notes) {
        for (TraceInfo.Note note : notes.subList(0, Math.min(notes.size(), CookNote.MOST))) {
            String text = CookNote.checked(note.text());
            long atMillis = Math.round(note.t() * 1000);
            writer.note(handle, new CookNote(UUID.randomUUID().toString(), atMillis, Instant.now(), text));
        }
    }

    /** Takes a cook out for good. */
    public void delete(long id) {
        refuseRunning(id);
        CookLine line = store.list().stream()
                .filter(one -> one.id() == id)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("there is no cook " + id + "; \"spoonfall log list\" lists them"));
        database.handle().useTransaction(handle -> {
            store.delete(handle, id);
            UpkeepBook.add(handle, went(line, line.readings(), true, "spoonfall log delete"));
        });
    }

    /**
     * Writes a line of a cook, running or over.
     *
     * @return the note as it is kept
     */
    public CookNote note(long id, String text) {
        StoredCook cook = cook(id);
        if (cook.notes().size() >= CookNote.MOST) {
            throw new IllegalArgumentException("cook " + id + " has " + CookNote.MOST + " notes, and no more fit");
        }
        long sinceMillis = (long)
                (Moment.now().since(cook.aliveAt()).toMillis() * cook.header().speed());
        CookNote note = new CookNote(
                UUID.randomUUID().toString(), cook.aliveMillis() + sinceMillis, Instant.now(), CookNote.checked(text));
        database.handle().useTransaction(handle -> NoteRow.insert(handle, id, note));
        return note;
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
     * Keeps one reading of each thermometer in ten seconds of the cooks that began before an instant and are over.
     * Words and events stay.
     *
     * @return how many readings were taken out
     */
    public long thin(Instant before) {
        long thinned = 0;
        for (CookLine line : list()) {
            if (line.startedAt().isBefore(before) && line.ended()) {
                thinned += thin(line, "spoonfall log thin");
            }
        }
        return thinned;
    }

    private long thin(CookLine line, String why) {
        StoredCook cook = cook(line.id());
        return database.handle().inTransaction(handle -> {
            long out = Thinning.thin(handle, cook, Thinning.EVERY);
            if (out > 0) {
                UpkeepBook.add(handle, went(line, out, false, why));
            }
            return out;
        });
    }

    private static UpkeepLine went(CookLine cook, long readings, boolean whole, String why) {
        return new UpkeepLine(Instant.now(), cook.id(), cook.startedAt(), cook.batch(), readings, whole, why);
    }

    /** What went from the record so far, and why, the latest first. */
    public List<UpkeepLine> upkeep() {
        return UpkeepBook.lines(database.handle());
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
