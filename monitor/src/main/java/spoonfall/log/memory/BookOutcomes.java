package spoonfall.log.memory;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spoonfall.learn.Batch;
import spoonfall.learn.Outcomes;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BatchOutcome;

/** The batches of the batch book of which somebody told the fruit and the set, and which boiled. */
public final class BookOutcomes implements Outcomes {
    private final BatchBook book;

    /** The batches in the file of all cooks, which need not be there yet. */
    public BookOutcomes(Path cooks) {
        book = new BatchBook(cooks);
    }

    @Override
    public List<Batch> batches() {
        List<Batch> batches = new ArrayList<>();
        for (BatchOutcome told : book.outcomes()) {
            boolean known = !told.fruit().isBlank()
                    && told.finalRiseC().isPresent()
                    && told.finalRiseC().getAsDouble() > 0
                    && told.finalRiseC().getAsDouble() <= Batch.MOST_RISE_C;
            told.outcome()
                    .set()
                    .filter(set -> known)
                    .ifPresent(set -> batches.add(new Batch(
                            told.id(),
                            told.fruit(),
                            told.finalRiseC().getAsDouble(),
                            set,
                            told.outcome().after())));
        }
        return List.copyOf(batches);
    }
}
