package spoonfall.log.memory;

import java.util.Arrays;
import java.util.OptionalDouble;
import spoonfall.probe.trace.Trace;

/** The rise of a cook above its water boil: levels that lasted, so that neither a stir nor a splash counts. */
final class Climb {
    /** What lasts so long to either side is no splash and no stir. */
    private static final double SETTLED_S = 20;

    private static final double STEP_S = 5;

    /** Readings by hand come every few minutes. */
    private static final double BY_HAND_S = 150;

    /** Cold sugar takes that much from a simmering pan (common practice, no source); a stir takes a degree or two. */
    private static final double SUGAR_FALL_C = 5;

    private static final double FALL_WITHIN_S = 120;

    private final double[] times;
    private final double[] risesC;
    private final int count;

    /** The climb of a trace above {@code waterBoilC}. */
    Climb(Trace trace, double waterBoilC) {
        times = new double[trace.size()];
        risesC = new double[trace.size()];
        int good = 0;
        for (int i = 0; i < trace.size(); i++) {
            OptionalDouble temperatureC = trace.temperatureC(i);
            if (temperatureC.isPresent()) {
                times[good] = trace.elapsedS(i);
                risesC[good] = temperatureC.getAsDouble() - waterBoilC;
                good++;
            }
        }
        count = good;
    }

    /** The last second of it. */
    double lastS() {
        return count == 0 ? 0 : times[count - 1];
    }

    /** The level in °C about second {@code t}, of readings up to {@code untilS}. */
    OptionalDouble level(double t, double untilS) {
        OptionalDouble near = middle(t - SETTLED_S, Math.min(t + SETTLED_S, untilS));
        return near.isPresent() ? near : middle(t - BY_HAND_S, Math.min(t + BY_HAND_S, untilS));
    }

    /** The highest level in °C up to a second. */
    OptionalDouble highest(double untilS) {
        OptionalDouble best = OptionalDouble.empty();
        for (double t = 0; t <= untilS; t += STEP_S) {
            OptionalDouble level = level(t, untilS);
            if (level.isPresent() && level.getAsDouble() > best.orElse(Double.NEGATIVE_INFINITY)) {
                best = level;
            }
        }
        return best;
    }

    /**
     * The second at which the sugar went in: the last deep fall before the pan came to {@code belowC}, for without sugar nothing
     * does; 0 if there was none.
     */
    double sugarS(double belowC) {
        double foundS = 0;
        double highC = Double.NEGATIVE_INFINITY;
        double highS = 0;
        for (double t = 0; t <= lastS(); t += STEP_S) {
            OptionalDouble level = middle(t - SETTLED_S, t + SETTLED_S);
            if (level.isEmpty()) {
                continue;
            }
            double now = level.getAsDouble();
            if (now >= belowC) {
                break;
            }
            if (now >= highC || t - highS > FALL_WITHIN_S) {
                highC = now;
                highS = t;
            } else if (highC - now >= SUGAR_FALL_C) {
                foundS = highS;
                highC = now;
                highS = t;
            }
        }
        return foundS;
    }

    private OptionalDouble middle(double fromS, double toS) {
        int from = after(fromS);
        int to = after(Math.nextUp(toS));
        if (from >= to) {
            return OptionalDouble.empty();
        }
        double[] window = Arrays.copyOfRange(risesC, from, to);
        Arrays.sort(window);
        int half = window.length / 2;
        return OptionalDouble.of(window.length % 2 == 1 ? window[half] : (window[half - 1] + window[half]) / 2);
    }

    private int after(double t) {
        int found = Arrays.binarySearch(times, 0, count, t);
        if (found < 0) {
            return -found - 1;
        }
        while (found > 0 && times[found - 1] == t) {
            found--;
        }
        return found;
    }
}
