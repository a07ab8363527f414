package spoonfall.log.store.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.book.Outcome;
import spoonfall.book.OutcomeWords;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.cook.StoredTrace;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.file.Fault;

/**
 * The batch book: every cook of the record, with what somebody said of it. Opens the file for each question, so that it may be used
 * from any thread, while the service writes, and after the file was replaced. What cannot be done is an {@link
 * IllegalArgumentException} that says why and the way out.
 */
public final class BatchBook {
    /** So many cooks are worked out with a list; more wait for the next one. */
    private static final int WORKED_OUT_AT_ONCE = 100;

    private static final Logger LOG = LoggerFactory.getLogger(BatchBook.class);

    private final Path file;

    /** The book in the file of all cooks, which need not be there yet. */
    public BatchBook(Path file) {
        this.file = file;
    }

    /** One page of the cooks that are looked for. */
    public BookList list(BookQuery query) {
        if (!Files.exists(file)) {
            return new BookList(List.of(), 0, List.of());
        }
        return asked(handle -> {
            BookDigest.catchUp(handle, Instant.now(), WORKED_OUT_AT_ONCE);
            return BookSearch.list(handle, query);
        });
    }

    /** The cook of that number, with its climb. */
    public BookPage page(long id) {
        return asked(handle -> {
            StoredCook cook = cook(handle, id);
            CookSettings settings = StoredTrace.settings(cook);
            RiseLine line = BookDigest.line(cook, settings);
            return new BookPage(
                    cook,
                    settings,
                    line,
                    BookDigest.marks(cook, line, settings),
                    OutcomeRows.made(handle, id),
                    OutcomeRows.outcomes(handle, id),
                    PhotoRows.list(handle, id));
        });
    }

    /** What the record holds of the cook of that number. */
    public StoredCook cook(long id) {
        return asked(handle -> cook(handle, id));
    }

    /**
     * Somebody says how a batch came out; what is not said stays as it was said before.
     *
     * @return all that was said
     */
    public BookSaid say(long id, OutcomeWords words) {
        return asked(handle -> handle.inTransaction(writing -> {
            refuseUnknown(writing, id);
            Outcome before = OutcomeRows.outcomes(writing, id).stream()
                    .filter(one -> one.after() == words.after())
                    .findFirst()
                    .orElse(Outcome.unknown(words.after()));
            OutcomeRows.write(writing, id, words.over(before), Instant.now());
            OutcomeRows.write(writing, id, words.over(OutcomeRows.made(writing, id)));
            return new BookSaid(OutcomeRows.made(writing, id), OutcomeRows.outcomes(writing, id));
        }));
    }

    /** Every outcome that somebody told, with what its batch came to, the oldest first. */
    public List<BatchOutcome> outcomes() {
        if (!Files.exists(file)) {
            return List.of();
        }
        return asked(handle -> {
            BookDigest.catchUp(handle, Instant.now(), Integer.MAX_VALUE);
            return OutcomeRows.all(handle);
        });
    }

    /**
     * Takes in a photo that was made anew.
     *
     * @param digest tells the file that came in from others: one that comes twice is kept once
     */
    public BookPhoto add(long id, String digest, int width, int height, byte[] jpeg) {
        return asked(handle -> handle.inTransaction(writing -> {
            refuseUnknown(writing, id);
            return PhotoRows.add(writing, id, new WholePhoto(digest, Instant.now(), width, height, jpeg));
        }));
    }

    /** The bytes of a photo of a cook, a JPEG; empty if there is none. */
    public Optional<byte[]> photo(long id, long photo) {
        return asked(handle -> PhotoRows.jpeg(handle, id, photo));
    }

    /** Takes a photo out for good; says whether it was there. */
    public boolean removePhoto(long id, long photo) {
        return asked(handle -> PhotoRows.remove(handle, id, photo));
    }

    /** Refuses a number that no cook has. */
    public void refuseUnknown(long id) {
        asked(handle -> {
            refuseUnknown(handle, id);
            return id;
        });
    }

    private static void refuseUnknown(Handle handle, long id) {
        boolean there = handle.createQuery("SELECT count(*) FROM cook WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (!there) {
            throw new NoSuchCook(id);
        }
    }

    private static StoredCook cook(Handle handle, long id) {
        return new CookStore(handle).read(id).orElseThrow(() -> new NoSuchCook(id));
    }

    private <T> T asked(Function<Handle, T> question) {
        if (!Files.exists(file)) {
            throw new IllegalArgumentException(
                    "nothing was recorded yet: there is no " + file + " (\"spoonfall serve\" makes it)");
        }
        try (Database database = opened()) {
            return question.apply(database.handle());
        } catch (JdbiException e) { // what else the question throws is no fault of the file
            throw unusable(e);
        }
    }

    private Database opened() {
        try {
            return Database.open(file);
        } catch (SQLException | RuntimeException e) {
            throw unusable(e);
        }
    }

    private IllegalArgumentException unusable(Exception e) {
        Fault fault = Fault.of(e);
        String why = fault.words(file).why();
        if (fault == Fault.FAILED) {
            LOG.warn("the record cannot be used: {}", e.toString()); // the words say little of it
        }
        LOG.debug("the record cannot be used", e);
        return new IllegalArgumentException("the record cannot be used: " + why, e);
    }

    /** There is no cook of that number. */
    public static final class NoSuchCook extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        NoSuchCook(long id) {
            super("there is no cook " + id + "; \"spoonfall log list\" lists them");
        }
    }
}
