package spoonfall.lab.varied;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/** Turns what a thermometer shows into rows: unevenly, with some lost, repeated or wild. */
final class Sampling {
    private static final double MOST_JITTER = 0.8;
    private static final double[] WILD_C = {0, 85, 25, 300, -20};

    private final Sensor.Settings settings;
    private final boolean spikes;
    private final double spikeEveryS;
    private final SplittableRandom random;
    private final Trace.Builder rows = new Trace.Builder();
    private double nextT;
    private double nextSpikeS;
    private OptionalDouble lastC = OptionalDouble.empty();

    /** Rows of a cook that climbs for about {@code climbS} seconds. */
    Sampling(Sensor.Settings settings, boolean spikes, double climbS, SplittableRandom random) {
        this.settings = settings;
        this.spikes = spikes;
        this.random = random;
        spikeEveryS = climbS / random.nextDouble(3, 12);
        nextSpikeS = spikeEveryS * random.nextDouble(0.2, 1);
    }

    /** Takes the readings that are due within the step from {@code t}. */
    void offer(
            double t,
            double seconds,
            Moment moment,
            Sensor sensor,
            OptionalDouble boilT,
            BiConsumer<Double, String> labels) {
        while (nextT < t + seconds - 1e-9) {
            double elapsedS = Math.round(nextT * 1000) / 1000.0;
            double jitter = settings.jitter() * random.nextGaussian();
            nextT += settings.periodS() * (1 + Math.max(-MOST_JITTER, Math.min(MOST_JITTER, jitter)));
            double shownC = moment.stuck && lastC.isPresent() ? lastC.getAsDouble() : sensor.reading(moment.shiftC);
            lastC = OptionalDouble.of(shownC);
            boolean lost = random.nextDouble() < settings.lostPart();
            boolean asEmptyRow = random.nextBoolean();
            if (lost || moment.silent) {
                if (lost && asEmptyRow) {
                    rows.add(elapsedS, OptionalDouble.empty());
                }
            } else if (spikes && boilT.isPresent() && t - boilT.getAsDouble() >= nextSpikeS) {
                nextSpikeS = t - boilT.getAsDouble() + spikeEveryS * random.nextDouble(0.5, 1.5);
                labels.accept(t, "spike");
                rows.add(elapsedS, OptionalDouble.of(wild(shownC)));
            } else {
                rows.add(elapsedS, OptionalDouble.of(shownC));
            }
        }
    }

    Trace build(TraceInfo info) {
        return rows.build(info);
    }

    private double wild(double shownC) {
        if (random.nextBoolean()) {
            return WILD_C[random.nextInt(WILD_C.length)];
        }
        double byC = (random.nextBoolean() ? 1 : -1) * random.nextDouble(5, 60);
        return Math.round((shownC + byC) * 100) / 100.0;
    }
}
