package spoonfall.canner;

import java.util.OptionalDouble;
import spoonfall.canning.CannerKind;
import spoonfall.canning.ProcessingTables;

/**
 * How a batch in the canner stands: immutable, so that a tap can be taken back. Times are seconds on the watch's scale.
 *
 * @param load the jars
 * @param loadedT when they went in
 * @param phase how far they are
 * @param sinceT when that began
 * @param run the boil that counts
 * @param byTaps whether the thermometer is not believed
 * @param processedT when the processing was over; meaningless before
 */
public record CannerBatch(
        JarLoad load, double loadedT, CannerPhase phase, double sinceT, Run run, boolean byTaps, double processedT) {

    /**
     * The boil that counts.
     *
     * @param startedT when its time began; meaningless before the first boil
     * @param steamT when a steam canner first steamed; empty for boiling water and before
     * @param restarts how often the whole time started again
     * @param vouchedT when the cook last said that it boils, or it was seen to begin
     * @param doubted whether the thermometer was silent since, and nobody vouched for the boil
     * @param awayS how many seconds of it nobody watched, because the service was away
     */
    public record Run(
            double startedT, OptionalDouble steamT, int restarts, double vouchedT, boolean doubted, double awayS) {
        static final Run NONE = new Run(0, OptionalDouble.empty(), 0, 0, false, 0);

        Run afterSilence() {
            return new Run(startedT, steamT, restarts, vouchedT, true, awayS);
        }

        /** What nobody watched stays in doubt: only at the end is it asked. */
        Run vouched(double t) {
            return new Run(startedT, steamT, restarts, t, awayS > 0, awayS);
        }

        Run afterAway(double s) {
            return new Run(startedT, steamT, restarts, vouchedT, true, awayS + s);
        }
    }

    static CannerBatch loaded(JarLoad load, double t) {
        return new CannerBatch(load, t, CannerPhase.WAITING, t, Run.NONE, false, t);
    }

    CannerBatch in(CannerPhase next, double t) {
        return new CannerBatch(load, loadedT, next, t, run, byTaps, processedT);
    }

    /** The whole time begins at {@code t}. */
    CannerBatch started(double t) {
        boolean steam = load.batch().canner() == CannerKind.STEAM;
        OptionalDouble first = steam && run.steamT().isEmpty() ? OptionalDouble.of(t) : run.steamT();
        int restarts = run.restarts() + (phase == CannerPhase.BOIL_LOST ? 1 : 0);
        return with(new Run(t, first, restarts, t, false, 0)).in(CannerPhase.PROCESSING, t);
    }

    CannerBatch with(Run next) {
        return new CannerBatch(load, loadedT, phase, sinceT, next, byTaps, processedT);
    }

    CannerBatch byTaps(boolean now) {
        return new CannerBatch(load, loadedT, phase, sinceT, run, now, processedT);
    }

    /** The time is up at {@code t}. */
    CannerBatch processed(double t) {
        return new CannerBatch(load, loadedT, CannerPhase.HEAT_OFF, t, run, byTaps, t);
    }

    /** New water is in the steam canner. */
    CannerBatch freshWater(double t) {
        return with(Run.NONE).in(CannerPhase.WAITING, t);
    }

    /** When the time that runs is up. */
    double dueT() {
        return run.startedT() + load.processS();
    }

    /** Whether the water of a steam canner would not last for the whole time from {@code t}. */
    boolean steamSpent(double t) {
        return run.steamT().isPresent()
                && t - run.steamT().getAsDouble() + load.processS() > ProcessingTables.MOST_STEAM_MINUTES * 60.0;
    }
}
