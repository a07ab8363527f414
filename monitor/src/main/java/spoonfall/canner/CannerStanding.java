package spoonfall.canner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything of the jars that a tap can change.
 *
 * @param batch the jars in the canner; empty when there are none
 * @param shelf the loads that came out, the oldest first
 */
record CannerStanding(Optional<CannerBatch> batch, List<ShelfLoad> shelf) {
    private static final int MOST_LOADS = 20;

    static final CannerStanding NOTHING = new CannerStanding(Optional.empty(), List.of());

    CannerStanding {
        shelf = List.copyOf(shelf);
    }

    CannerStanding with(CannerBatch next) {
        return new CannerStanding(Optional.of(next), shelf);
    }

    CannerStanding with(List<ShelfLoad> next) {
        return new CannerStanding(batch, next);
    }

    CannerPhase phase() {
        return batch.map(CannerBatch::phase).orElse(CannerPhase.EMPTY);
    }

    /** The jars come out of the canner at {@code t}, as the load of that number. */
    CannerStanding lifted(int number, double t) {
        if (shelf.size() == MOST_LOADS) {
            throw new NotNow(MOST_LOADS + " loads are cooling; put one away first");
        }
        List<ShelfLoad> longer = new ArrayList<>(shelf);
        longer.add(ShelfLoad.of(number, batch.orElseThrow(), t));
        return new CannerStanding(Optional.empty(), longer);
    }

    /** A time that ran while nobody watched is in doubt: somebody has to say at its end that it boiled. */
    CannerStanding afterAway(double awayS) {
        return batch.filter(one -> one.phase() == CannerPhase.PROCESSING)
                .map(one -> with(one.with(one.run().afterAway(awayS))))
                .orElse(this);
    }
}
