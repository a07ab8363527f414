package spoonfall.learn;

import java.util.List;

/** Where the finished batches and how they set come from. */
@FunctionalInterface
public interface Outcomes {
    /** The batches of which both are known. */
    List<Batch> batches();
}
