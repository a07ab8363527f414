package spoonfall.kitchen.pantry;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.plan.HobPower;
import spoonfall.plan.TypedSetup;

/**
 * What batches are planned with: the foods that are known, what the notes say of this batch, and what earlier cooks showed of the hob. The
 * table of foods is read when it is first asked for.
 */
public final class Pantry {
    private static final Logger LOG = LoggerFactory.getLogger(Pantry.class);

    private final Supplier<Foods> source;
    private final Optional<PlanFile> notes;
    private final Optional<HobBook> hobs;
    private Optional<Foods> foods = Optional.empty();

    private Pantry(Supplier<Foods> source, Optional<PlanFile> notes, Optional<HobBook> hobs) {
        this.source = source;
        this.notes = notes;
        this.hobs = hobs;
    }

    /** The usual foods; nothing is known of the batch or the hob, and nothing is kept. */
    public static Pantry usual() {
        return new Pantry(FoodBook::usual, Optional.empty(), Optional.empty());
    }

    /** The usual foods with a batch that is planned from the start; nothing is kept. */
    public static Pantry of(PlanFile notes) {
        return new Pantry(FoodBook::usual, Optional.of(notes), Optional.empty());
    }

    /**
     * The usual foods and those of a file, if there is one.
     *
     * @param foods foods of the cook's own, which need not be there
     * @param hob what earlier cooks showed, which need not be there
     * @param notes the batch notes of this batch
     * @throws IllegalArgumentException in one line if the foods or the notes cannot be read
     */
    public static Pantry of(Path foods, Path hob, Optional<Path> notes) {
        if (notes.isEmpty() && !foods.toFile().exists()) {
            return new Pantry(FoodBook::usual, Optional.empty(), Optional.of(new HobBook(hob)));
        }
        Foods known = FoodBook.withAny(foods);
        return new Pantry(() -> known, notes.map(file -> PlanFile.read(file, known)), Optional.of(new HobBook(hob)));
    }

    /** The foods that are known. */
    public synchronized Foods foods() {
        Foods known = foods.orElseGet(source);
        foods = Optional.of(known);
        return known;
    }

    /** What the notes say goes into the pan; empty if they do not. */
    public List<Ingredient> suggested() {
        return notes.map(PlanFile::ingredients).orElse(List.of());
    }

    /** What the notes say it is cooked with. */
    public TypedSetup setup() {
        return notes.map(PlanFile::setup)
                .orElse(new TypedSetup(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** What heats a pan, by its earlier cooks; empty if none was planned. A book that cannot be read is gone without. */
    public Optional<HobPower> hob(String pan) {
        try {
            return hobs.flatMap(book -> book.power(pan));
        } catch (IllegalArgumentException | UncheckedIOException e) {
            LOG.warn("earlier cooks are not taken into account: {}", e.getMessage());
            return Optional.empty();
        }
    }

    /** Keeps what a cook showed of its hob, if it can be kept. */
    public void learn(String pan, OptionalDouble waterKgPerMin) {
        try {
            waterKgPerMin.ifPresent(rate -> hobs.ifPresent(book -> book.add(pan, Instant.now(), rate)));
        } catch (IllegalArgumentException | UncheckedIOException e) {
            LOG.warn("what this cook showed of the hob is not kept: {}", e.getMessage());
        }
    }
}
