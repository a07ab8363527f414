package spoonfall.score;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import spoonfall.probe.trace.Trace;

/**
 * Somebody who looks at the thermometer of a recorded cook now and then and types what it shows, to the nearest mark. Nobody
 * looks on the second: an interval is off by N(0, 15 %), at most 40 %. Common practice, no source.
 *
 * @param everyS how often, in seconds; 5 to 3,600
 * @param stepC from mark to mark, in °C; 0.01 to 5
 */
public record ByHand(double everyS, double stepC) {
    private static final double UNEVEN = 0.15;
    private static final double MOST_UNEVEN = 0.4;

    /** Validates both. */
    public ByHand {
        if (!(everyS >= 5 && everyS <= 3600)) {
            throw new IllegalArgumentException(
                    "who reads by hand looks every 5 s to 60 min, not every " + everyS + " s");
        }
        if (!(stepC >= 0.01 && stepC <= 5)) {
            throw new IllegalArgumentException("the marks of a thermometer are 0.01 to 5 °C apart, not " + stepC);
        }
    }

    /** What is typed of a trace; the same {@code name} gives the same. A reading that is missing is not looked at. */
    public Trace look(String name, Trace trace) {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        Trace.Builder rows = new Trace.Builder();
        double nextS = everyS * random.nextDouble();
        for (int i = 0; i < trace.size(); i++) {
            OptionalDouble shown = trace.temperatureC(i);
            if (trace.elapsedS(i) >= nextS && shown.isPresent()) {
                double uneven = Math.max(-MOST_UNEVEN, Math.min(MOST_UNEVEN, UNEVEN * random.nextGaussian()));
                nextS = trace.elapsedS(i) + everyS * (1 + uneven);
                rows.add(trace.elapsedS(i), OptionalDouble.of(stepC * Math.rint(shown.getAsDouble() / stepC)));
            } else if (i == trace.size() - 1) {
                rows.add(trace.elapsedS(i), OptionalDouble.empty());
            }
        }
        return rows.build(trace.info());
    }
}
