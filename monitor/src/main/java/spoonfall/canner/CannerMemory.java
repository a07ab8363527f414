package spoonfall.canner;

import java.util.List;
import java.util.Optional;
import spoonfall.alarm.AlarmState;

/**
 * Everything that a watch must know to go on where another one was: what taps can take back is not among it. Times are seconds
 * on the watch's scale.
 *
 * @param t when it stood so
 * @param batch the jars in the canner; empty when there are none
 * @param shelf the loads that came out, the oldest first
 * @param loads how many loads came out so far
 * @param marks how many taps changed something so far
 * @param taps the ids of the latest taps, the oldest first, so that one that arrives again counts once
 * @param called the alarms that were ever raised
 */
public record CannerMemory(
        double t,
        Optional<CannerBatch> batch,
        List<ShelfLoad> shelf,
        int loads,
        long marks,
        List<String> taps,
        List<Called> called) {
    /** No alarm is raised so often in a kitchen. */
    private static final int MOST_CALLS = 10_000;

    /** Validates the counts, and keeps copies of the lists. */
    public CannerMemory {
        if (!Double.isFinite(t) || loads < 0 || marks < 0) {
            throw new IllegalArgumentException(
                    "jars do not stand at second " + t + " after " + loads + " loads and " + marks + " taps");
        }
        shelf = List.copyOf(shelf);
        taps = List.copyOf(taps);
        called = List.copyOf(called);
    }

    /** Whether no jars are anywhere. */
    public boolean nothingThere() {
        return batch.isEmpty() && shelf.isEmpty();
    }

    /**
     * An alarm that was raised.
     *
     * @param name which
     * @param occurrence how often so far
     * @param state where it is in its life cycle
     * @param raisedT when it was last raised
     * @param text the words it was raised with
     */
    public record Called(CannerAlarmName name, int occurrence, AlarmState state, double raisedT, Say text) {
        /** Validates how often it was raised. */
        public Called {
            if (occurrence < 1 || occurrence > MOST_CALLS) {
                throw new IllegalArgumentException(name.wireName() + " was not raised " + occurrence + " times");
            }
        }
    }
}
