package spoonfall.log.memory;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import spoonfall.book.Firmness;
import spoonfall.food.Foods;
import spoonfall.learn.Batch;
import spoonfall.learn.CookFacts;
import spoonfall.learn.Diagnosis;
import spoonfall.learn.Learning;
import spoonfall.learn.Outcomes;
import spoonfall.learn.Proposal;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.DataFolder;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.cook.StoredCook;

/** The batches that are over: what they teach, and why one of them came out as it did. May be asked by any thread. */
public final class BatchMemory {
    /** The word in a cook's record that says which cook it goes on with. */
    public static final String RECOOK = "recook";

    private final DataFolder data;
    private final Outcomes outcomes;
    private final Supplier<Foods> foods;
    private @Nullable Learning latest;

    /**
     * The memory of a data folder.
     *
     * @param outcomes what is known of how the batches set
     * @param foods the foods of which plans are made
     */
    public BatchMemory(DataFolder data, Outcomes outcomes, Supplier<Foods> foods) {
        this.data = data;
        this.outcomes = outcomes;
        this.foods = foods;
    }

    private BookPage page(long id) {
        return new BatchBook(data.cooks()).page(id);
    }

    /** What the batches teach. Learns anew when another has told how it set. */
    public synchronized Learning learning() {
        List<Batch> batches = outcomes.batches();
        Learning known = latest;
        if (known == null || !known.isFrom(batches)) {
            known = Learning.from(batches);
            latest = known;
        }
        return known;
    }

    /** The batch of that number, if it has told how it set. */
    public Optional<Batch> batch(long id) {
        return learning().batches().stream().filter(batch -> batch.id() == id).findFirst();
    }

    /** Why the batch of that number set as it did, by what was said of that. */
    public Diagnosis diagnosis(long id) {
        Optional<Batch> told = batch(id);
        return diagnosis(id, told.map(Batch::set), told.map(Batch::fruit));
    }

    /**
     * Why the batch of that number set as it did.
     *
     * @param set how it set; empty if nobody said
     * @param fruit what was made; empty if nobody said
     */
    public Diagnosis diagnosis(long id, Optional<Firmness> set, Optional<String> fruit) {
        Optional<Proposal> learnt = fruit.map(learning()::propose);
        return Diagnosis.of(facts(id), set, learnt);
    }

    /** What the record and the calibrations know of a cook. */
    public CookFacts facts(long id) {
        BookPage page = page(id);
        OptionalDouble highC = NextCalibration.highC(
                page.cook(), data.calibrations().entries(), page.settings().gelPointC());
        return new StoredFacts(page).facts(earlierMinutes(page), highC, foods.get());
    }

    /** The minutes of the cooks that a cook goes on with, all the way back. */
    private double earlierMinutes(BookPage page) {
        Set<Long> seen = new HashSet<>(Set.of(page.cook().id()));
        double minutes = 0;
        OptionalLong of = recookOf(page.cook());
        while (of.isPresent() && seen.add(of.getAsLong())) {
            BookPage before;
            try {
                before = page(of.getAsLong());
            } catch (BatchBook.NoSuchCook e) {
                return minutes; // it was deleted since
            }
            minutes += new StoredFacts(before).boilMinutes().orElse(0);
            of = recookOf(before.cook());
        }
        return minutes;
    }

    /**
     * Writes into the record that a cook which is over went on with an earlier one.
     *
     * @throws IllegalArgumentException in one line if one of them is not there, or cannot be
     */
    public void recooks(long id, long of) {
        try (CookLog log = CookLog.open(data.cooks())) {
            StoredCook earlier = log.cook(of);
            StoredCook later = log.cook(id);
            if (id == of
                    || !earlier.header().startedAt().isBefore(later.header().startedAt())) {
                throw new IllegalArgumentException(
                        "cook " + id + " cannot go on with cook " + of + ", which did not begin before it");
            }
            log.say(id, RECOOK, recook(of));
        }
    }

    /**
     * Sees to it that there is such a cook.
     *
     * @throws IllegalArgumentException in one line if there is not
     */
    public void known(long id) {
        try (CookLog log = CookLog.open(data.cooks())) {
            log.cook(id);
        }
    }

    /** Which cook a cook goes on with; empty if none. */
    public static OptionalLong recookOf(StoredCook cook) {
        OptionalLong of = OptionalLong.empty();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Word word && word.kind().equals(RECOOK)) {
                of = of(word.detail());
            }
        }
        return of;
    }

    /** What a word on a recook keeps. */
    public static ObjectNode recook(long of) {
        return CookJson.object().put("of", of);
    }

    private static OptionalLong of(ObjectNode detail) {
        return detail.path("of").isIntegralNumber()
                ? OptionalLong.of(detail.path("of").longValue())
                : OptionalLong.empty();
    }
}
