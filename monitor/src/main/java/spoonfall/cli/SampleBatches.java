package spoonfall.cli;

import java.util.List;
import spoonfall.book.Firmness;
import spoonfall.learn.Batch;

/** Invented batches of the Hollin Bank kitchen, for the demo. They were never recorded: their numbers are below 0. */
final class SampleBatches {
    private static final String SEVILLE = "Seville orange and ginger";

    private SampleBatches() {}

    /** The batches before the one that the demo shows, the earliest first. */
    static List<Batch> batches() {
        return List.of(
                new Batch(-7, SEVILLE, 4.4, Firmness.SOFT),
                new Batch(-6, SEVILLE, 4.9, Firmness.RIGHT),
                new Batch(-5, "damson", 4.5, Firmness.FIRM),
                new Batch(-4, SEVILLE, 4.6, Firmness.SOFT),
                new Batch(-3, "damson", 4.1, Firmness.RIGHT),
                new Batch(-2, SEVILLE, 5.3, Firmness.FIRM),
                new Batch(-1, SEVILLE, 4.6, Firmness.RIGHT));
    }
}
