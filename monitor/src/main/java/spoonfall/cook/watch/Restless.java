package spoonfall.cook.watch;

import spoonfall.cook.signal.Signals;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/**
 * Whether the readings scatter more than they used to: vapour that breaks from under what catches shakes the thermometer. How far they lie
 * from the line of the last 45 s is held against what it was two to five minutes ago. The numbers are judgements, no source.
 */
final class Restless {
    private static final double FROM_S = 300;
    private static final double UNTIL_S = 120;
    private static final double TIMES = 1.6;
    private static final double LEAST_C = 0.05;

    private final Slots slots = new Slots();
    private final Track scatters = new Track(FROM_S);

    /** Forgets the way here. */
    void restart() {
        scatters.clear();
    }

    /** Takes note of how the readings scatter; to be told once a second. */
    void endSecond(Signals now) {
        if (now.quick().isPresent() && slots.begins(now.t())) {
            scatters.add(now.t(), now.quick().get().scatter());
        }
    }

    /** Whether they scatter more now, and further than the thermometer's steps. */
    boolean grown(Signals now) {
        double usualC =
                scatters.middleBetween(now.t() - FROM_S, now.t() - UNTIL_S).orElse(Double.POSITIVE_INFINITY);
        double calmC = Math.max(LEAST_C, TIMES * Math.max(usualC, now.stepC()));
        return now.quick().filter(line -> line.scatter() > calmC).isPresent();
    }
}
