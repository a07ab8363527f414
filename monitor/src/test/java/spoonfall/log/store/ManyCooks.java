package spoonfall.log.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;
import spoonfall.cook.CookSettings;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookNote;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.upkeep.CookPacker;
import spoonfall.probe.trace.Trace;

/** A record with very many cooks: some that were simulated, and copies of them on other days with other names, notes and outcomes. */
public final class ManyCooks {
    private static final List<String> FRUITS = List.of(
            "Seville orange",
            "damson",
            "quince",
            "gooseberry",
            "blackcurrant",
            "lemon",
            "plum",
            "crab apple",
            "medlar");
    private static final List<String> WITH = List.of("", " and ginger", " and whisky", " and vanilla", ", thick cut");
    private static final List<String> NOTES = List.of(
            "a little dark; two minutes less next time",
            "peel simmered for two hours the day before",
            "the big pan on the left hob",
            "skimmed twice, foam lower than last time",
            "jars from the top shelf");
    private static final Instant LATEST = Instant.parse("2026-11-20T09:00:00Z");
    private static final int A_TRANSACTION = 100;
    private static final int MOST_LATE_MILLIS = 15;

    private ManyCooks() {}

    /**
     * Fills a file that is not there yet.
     *
     * @param drawn the cooks that the copies are made of
     * @param settings what all of them are measured against
     */
    public static void fill(Path file, List<Trace> drawn, CookSettings settings, int cooks, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<WholeCook> whole = new ArrayList<>();
        try (CookLog log = CookLog.openOrMake(file)) {
            for (Trace trace : drawn) {
                long id = log.take(trace, settings);
                whole.add(unsteady(log.whole(id), random));
                log.delete(id);
            }
        }
        try (Database database = Database.open(file)) {
            for (int done = 0; done < cooks; done += A_TRANSACTION) {
                int from = done;
                database.handle().useTransaction(handle -> {
                    for (int i = from; i < Math.min(cooks, from + A_TRANSACTION); i++) {
                        copy(whole.get(i % whole.size()), i, cooks, random).write(handle, i + 1);
                    }
                });
                pack(database.handle());
                new BatchBook(file).outcomes(); // works out every cook that is over
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Readings of a real line come some milliseconds late, each by its own, and those take room. */
    private static WholeCook unsteady(WholeCook cook, SplittableRandom random) {
        List<CookInput> inputs = new ArrayList<>();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard) {
                long millis = heard.takenMillis() + random.nextInt(MOST_LATE_MILLIS + 1);
                inputs.add(new CookInput.Heard(heard.probe(), millis, millis, heard.shownC(), heard.quality()));
            } else {
                inputs.add(input);
            }
        }
        return new WholeCook(
                cook.header(),
                inputs,
                cook.events(),
                cook.notes(),
                cook.aliveMillis(),
                cook.endedMillis(),
                cook.made(),
                cook.outcomes(),
                List.of());
    }

    private static void pack(Handle handle) {
        while (CookPacker.next(handle)) {
            // until none is left
        }
    }

    private static WholeCook copy(WholeCook cook, int number, int cooks, SplittableRandom random) {
        String fruit = FRUITS.get(random.nextInt(FRUITS.size()));
        String batch = fruit + WITH.get(random.nextInt(WITH.size())) + ", batch " + (number + 1);
        Instant startedAt = LATEST.minus(Duration.ofHours(9L * (cooks - number)));
        CookHeader was = cook.header();
        CookHeader header = new CookHeader(
                was.number(),
                was.pan(),
                "Hollin Bank",
                batch,
                was.source(),
                was.speed(),
                startedAt,
                was.asked(),
                was.basis(),
                was.corrections());
        List<CookNote> notes = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            String text = one(NOTES, random);
            notes.add(new CookNote(UUID.randomUUID().toString(), i * 600_000L, startedAt.plusSeconds(600L * i), text));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (After after : After.values()) {
            if (random.nextInt(10) < 7) {
                Firmness set = one(List.of(Firmness.values()), random);
                Set<Taste> taste = EnumSet.of(one(List.of(Taste.values()), random));
                outcomes.add(
                        new Outcome(after, Optional.of(set), taste, random.nextInt(50) == 0 ? "weeps a little" : ""));
            }
        }
        Made made = new Made(fruit, OptionalInt.of(3 + random.nextInt(9)));
        return new WholeCook(
                header,
                cook.inputs(),
                cook.events(),
                notes,
                cook.aliveMillis(),
                cook.endedMillis(),
                made,
                outcomes,
                List.of());
    }

    /** The readings of all cooks of a file. */
    public static long readings(Path file) {
        return counted(file, "SELECT sum(count) FROM chunk");
    }

    /** The bytes of all readings of a file, as they lie in it. */
    public static long readingBytes(Path file) {
        return counted(file, "SELECT sum(length(readings)) FROM chunk");
    }

    private static long counted(Path file, String question) {
        try (Database database = Database.open(file)) {
            return database.handle().createQuery(question).mapTo(Long.class).one();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static <T> T one(List<T> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }
}
