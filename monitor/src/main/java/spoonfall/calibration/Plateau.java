package spoonfall.calibration;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Waits until a thermometer stands still at a reference: a minute without drift or noise beyond what boiling makes.
 * Times are seconds on the caller's scale and must not run backwards.
 */
public final class Plateau {
    private static final double WINDOW_S = 60;
    private static final int LEAST_READINGS = 12;
    private static final double MOST_DRIFT_PER_MIN_C = 0.15;
    private static final double MOST_NOISE_C = 0.35;
    private static final double FARTHEST_C = 6;

    /** Beyond this a kitchen does not know where water boils in it; what boils anywhere people live is taken then. */
    private static final double KNOWN_TO_C = 3;

    /** Bubbles make neighbouring readings alike: so many seconds apart they count as independent. */
    private static final double INDEPENDENT_AFTER_S = 4;

    private final Reference reference;
    private final Deque<double[]> readings = new ArrayDeque<>();

    /** A plateau at {@code reference} that has not been reached. */
    public Plateau(Reference reference) {
        this.reference = reference;
    }

    /**
     * What is so now.
     *
     * @param point the comparison, once it stands still
     * @param why in one sentence, why not yet; with marks for units
     */
    public record Verdict(Optional<Point> point, String why) {
        static Verdict notYet(String why) {
            return new Verdict(Optional.empty(), why);
        }
    }

    /** Takes a reading and says whether the plateau is reached. */
    public Verdict accept(double t, double temperatureC) {
        readings.addLast(new double[] {t, temperatureC});
        while (readings.getFirst()[0] < t - WINDOW_S) {
            readings.removeFirst();
        }
        double spanS = t - readings.getFirst()[0];
        double missC = temperatureC - reference.temperatureC();
        if (Math.abs(missC) > Math.max(FARTHEST_C, reference.limitC() > KNOWN_TO_C ? reference.limitC() : 0)) {
            return Verdict.notYet(far(missC));
        }
        if (spanS < 0.9 * WINDOW_S || readings.size() < LEAST_READINGS) {
            return Verdict.notYet("Steady so far; a minute of it is needed.");
        }
        Line line = Line.through(readings);
        double driftPerMinC = line.slope() * 60;
        if (line.scatter() > MOST_NOISE_C) {
            return Verdict.notYet("Too noisy: keep the tip clear of the base and out of the bubbles.");
        }
        double doubtPerMinC = 2 * line.slopeError() * 60;
        if (Math.abs(driftPerMinC) > MOST_DRIFT_PER_MIN_C + doubtPerMinC) {
            return Verdict.notYet(driftPerMinC > 0 ? "Still rising." : "Still falling.");
        }
        double independent = Math.max(4, Math.min(readings.size(), spanS / INDEPENDENT_AFTER_S));
        double noiseC = line.scatter() / Math.sqrt(independent);
        double driftC = Math.abs(driftPerMinC) * spanS / 60 / Math.sqrt(12);
        return new Verdict(Optional.of(new Point(reference, line.mean(), noiseC, driftC)), "");
    }

    private String far(double missC) {
        if (reference.kind() == Reference.Kind.ICE) {
            return missC > 0
                    ? "Still too warm for ice: stir the slush and wait."
                    : "Far below ice: is the thermometer in the unit that you think?";
        }
        return missC < 0
                ? "Not boiling yet, or the thermometer is not in the water."
                : "Above boiling water by more than {diff:6}: is it plain water, and the unit right?";
    }

    /** A least-squares line through the readings. */
    private record Line(double mean, double slope, double scatter, double slopeError) {
        static Line through(Deque<double[]> readings) {
            double n = readings.size();
            double meanT = readings.stream().mapToDouble(r -> r[0]).average().orElse(0);
            double meanC = readings.stream().mapToDouble(r -> r[1]).average().orElse(0);
            double spread = 0;
            double product = 0;
            for (double[] reading : readings) {
                spread += (reading[0] - meanT) * (reading[0] - meanT);
                product += (reading[0] - meanT) * (reading[1] - meanC);
            }
            double slope = product / spread;
            double squares = 0;
            for (double[] reading : readings) {
                double off = reading[1] - meanC - slope * (reading[0] - meanT);
                squares += off * off;
            }
            double scatter = Math.sqrt(squares / (n - 2));
            return new Line(meanC, slope, scatter, scatter / Math.sqrt(spread));
        }
    }
}
