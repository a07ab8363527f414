package spoonfall.kitchen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.log.CookRecord;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.plan.LearntRate;
import spoonfall.plan.Yield;

/** The plans of a pan: that of the cook in it, and that of the next. Used by the kitchen's thread alone. */
public final class PlannedCook {
    private static final int MOST_JARS = 500;
    private static final double MINUTE_S = 60;
    private static final double LEAST_DOUBT = 0.01;

    private Optional<PlannedBatch> current = Optional.empty();
    private Optional<PlannedBatch> next = Optional.empty();
    private OptionalInt filled = OptionalInt.empty();

    /** Whether the next cook has a plan already. */
    public boolean hasNext() {
        return next.isPresent();
    }

    /** A plan, or none, for this cook or for the next. */
    public void say(Optional<PlannedBatch> batch, boolean forTheNext) {
        if (forTheNext) {
            next = batch;
        } else {
            current = batch;
        }
    }

    /** What the forecast of this cook is told. */
    public Optional<PanPrior> prior() {
        return current.flatMap(PlannedCook::prior);
    }

    /** What the forecast is told of a batch; empty if its plan does not know the hob, or is of less than a minute's boiling. */
    public static Optional<PanPrior> prior(PlannedBatch batch) {
        return batch.pan()
                .filter(told -> told.waterKgPerMin() < told.totalKg())
                .map(told -> new PanPrior(
                        told.totalKg(),
                        told.solidsKg(),
                        told.waterKgPerMin(),
                        Math.min(1, Math.max(LEAST_DOUBT, told.relativeDoubt()))));
    }

    /** A cook begins; returns its plan. */
    public Optional<PlannedBatch> begin() {
        current = next;
        next = Optional.empty();
        filled = OptionalInt.empty();
        return current;
    }

    /** A cook is over. */
    public void end() {
        current = Optional.empty();
        filled = OptionalInt.empty();
    }

    /** So many jars were filled. */
    public void filled(int jars) {
        if (jars < 0 || jars > MOST_JARS) {
            throw new IllegalArgumentException("how many jars? 0 to " + MOST_JARS + ", not " + jars);
        }
        filled = OptionalInt.of(jars);
    }

    /** How it stands. */
    public PlanState state(Optional<CookRecord> record, CookSettings settings, Optional<CookStatus> status) {
        boolean off = status.map(now -> now.stage() == Stage.OFF_THE_HEAT).orElse(false);
        Optional<String> yield = filled.isEmpty()
                ? Optional.empty()
                : current.map(batch -> Yield.words(batch.jars(), batch.manyJars(), filled.getAsInt()));
        OptionalDouble rate = current.isPresent() && record.isPresent()
                ? LearntRate.kgPerMin(
                        seen(record.get(), settings),
                        settings.waterBoil().pressurePa(),
                        current.get().solidsKg())
                : OptionalDouble.empty();
        boolean countable = current.isPresent() && (off || filled.isPresent());
        return new PlanState(
                next.or(() -> current), next.isPresent() || status.isEmpty(), countable, filled, yield, rate);
    }

    /** The middle reading of each minute: a single one may be a splash or a stir. */
    private static List<LearntRate.Seen> seen(CookRecord record, CookSettings settings) {
        double waterBoilC = settings.waterBoil().temperatureC();
        List<LearntRate.Seen> seen = new ArrayList<>();
        List<Double> minute = new ArrayList<>();
        double beginT = 0;
        for (int i = 0; i < record.size(); i++) {
            if (!minute.isEmpty() && record.t(i) - beginT >= MINUTE_S) {
                minute.sort(null);
                seen.add(new LearntRate.Seen(
                        (beginT + record.t(i - 1)) / 2, minute.get(minute.size() / 2) - waterBoilC));
                minute.clear();
            }
            if (minute.isEmpty()) {
                beginT = record.t(i);
            }
            minute.add(record.temperatureC(i));
        }
        return seen;
    }
}
