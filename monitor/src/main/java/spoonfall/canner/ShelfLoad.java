package spoonfall.canner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Jars of one load that came out of the canner. They cool untouched for 12 to 24 hours, then each lid is looked at; what
 * did not seal goes into the refrigerator or is processed anew within 24 hours (NCHFP; the 24 hours also Univ. of
 * Nebraska and Kansas State Univ. Extension).
 *
 * @param number counts loads from 1
 * @param load the jars
 * @param loadedT when they went into the canner, in seconds on the watch's scale
 * @param processedT when their processing was over
 * @param liftedT when they came out
 * @param seals how each jar's lid is
 */
public record ShelfLoad(int number, JarLoad load, double loadedT, double processedT, double liftedT, List<Seal> seals) {
    /** The shortest time of cooling, in seconds. */
    public static final double COOLING_S = 12 * 3600;

    /** Within so many seconds after processing a jar that did not seal can be processed anew. */
    public static final double REPROCESS_S = 24 * 3600;

    /** How far the jars are. */
    public enum Phase {
        /** They cool untouched. */
        COOLING,
        /** The seals are to be looked at. */
        SEAL_CHECK,
        /** Every jar was looked at. */
        DONE;

        /** The name on the wire, such as {@code seal-check}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Copies the seals. */
    public ShelfLoad {
        seals = List.copyOf(seals);
    }

    static ShelfLoad of(int number, CannerBatch batch, double t) {
        List<Seal> unknown = Collections.nCopies(batch.load().jars(), Seal.UNKNOWN);
        return new ShelfLoad(number, batch.load(), batch.loadedT(), batch.processedT(), t, unknown);
    }

    ShelfLoad with(int jar, Seal seal) {
        List<Seal> next = new ArrayList<>(seals);
        next.set(jar - 1, seal);
        return new ShelfLoad(number, load, loadedT, processedT, liftedT, next);
    }

    /** How far they are at {@code t}. */
    public Phase phase(double t) {
        if (t < checkT()) {
            return Phase.COOLING;
        }
        return seals.contains(Seal.UNKNOWN) ? Phase.SEAL_CHECK : Phase.DONE;
    }

    /** When the seals can be looked at. */
    public double checkT() {
        return liftedT + COOLING_S;
    }

    /** Until when what did not seal can be processed anew. */
    public double reprocessUntilT() {
        return processedT + REPROCESS_S;
    }
}
