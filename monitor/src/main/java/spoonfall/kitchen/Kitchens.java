package spoonfall.kitchen;

import java.time.InstantSource;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.canner.CannerDesk;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.log.Diary;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.store.book.BatchBook;

/** The pans of one kitchen, each with its own {@link Kitchen} at work on it, and the canner if it has a thermometer. */
public final class Kitchens implements AutoCloseable {
    private final Map<String, Kitchen> pans;
    private final Optional<Canner> canner;
    private final CannerDesk jars;
    private final Optional<BatchBook> book;
    private Optional<BatchMemory> memory = Optional.empty();
    private Pantry pantry = Pantry.usual();

    /**
     * Pans that have not started, in the order in which a page shows them.
     *
     * @param kitchens one for each pan, at least one, of pans that are differently named
     * @param canner the canner; empty if no thermometer is in it
     */
    public Kitchens(List<Kitchen> kitchens, Optional<Canner> canner) {
        this(kitchens, canner, Diary.none(), Optional.empty());
    }

    /**
     * The same, where how the jars stand is written down.
     *
     * @param kitchens one for each pan, at least one, of pans that are differently named
     * @param canner the canner; empty if no thermometer is in it
     * @param diary where, and where jars that an earlier run left are found
     * @param book the book of all cooks; empty if none are kept
     */
    public Kitchens(List<Kitchen> kitchens, Optional<Canner> canner, Diary diary, Optional<BatchBook> book) {
        this.book = book;
        Map<String, Kitchen> byName = new LinkedHashMap<>();
        for (Kitchen kitchen : kitchens) {
            String pan = kitchen.plan().pan();
            if (byName.put(pan, kitchen) != null) {
                throw new IllegalArgumentException("two pans are called " + pan + "; give each a name of its own");
            }
        }
        if (byName.isEmpty()) {
            throw new IllegalArgumentException("a kitchen has at least one pan");
        }
        this.pans = Collections.unmodifiableMap(byName);
        this.canner = canner;
        double speed = canner.isPresent() ? 1 : first().plan().speed();
        jars = new CannerDesk(
                canner.map(Canner::clock).orElseGet(() -> first().clock()), InstantSource.system(), diary, speed);
        canner.ifPresent(one -> one.listen(jars));
    }

    /** A kitchen with one pan. */
    public static Kitchens one(Kitchen kitchen) {
        return new Kitchens(List.of(kitchen), Optional.empty());
    }

    /** Gives the pans a memory of earlier batches, before they start; returns the pans. */
    public Kitchens remembering(BatchMemory batches) {
        memory = Optional.of(batches);
        return this;
    }

    /** What earlier batches taught; empty where nothing is kept. */
    public Optional<BatchMemory> memory() {
        return memory;
    }

    /** Puts other foods at hand, before the pans start; returns the pans. */
    public Kitchens stocked(Pantry other) {
        pantry = other;
        return this;
    }

    /** What batches are planned with. */
    public Pantry pantry() {
        return pantry;
    }

    /** The pan that is shown unless another one is asked for. */
    public Kitchen first() {
        return pans.values().iterator().next();
    }

    /** The pan of that name; empty if there is none. */
    public Optional<Kitchen> named(String pan) {
        return Optional.ofNullable(pans.get(pan));
    }

    /** Their names, in order. */
    public List<String> names() {
        return List.copyOf(pans.keySet());
    }

    /** All of them, in order. */
    public Collection<Kitchen> all() {
        return pans.values();
    }

    /** The canner's thermometer. */
    public Optional<Canner> canner() {
        return canner;
    }

    /** Where filled jars are watched. */
    public CannerDesk jars() {
        return jars;
    }

    /** The book of all cooks; empty if none are kept. */
    public Optional<BatchBook> book() {
        return book;
    }

    /** Starts watching them all. */
    public void start() {
        pans.values().forEach(Kitchen::start);
        jars.listen(new JarsInTheAfternoon(pans.values()));
        canner.ifPresent(Canner::start);
    }

    /** Stops watching, and frees every probe. */
    @Override
    public void close() {
        canner.ifPresent(Canner::close);
        jars.close();
        pans.values().forEach(Kitchen::close);
    }
}
