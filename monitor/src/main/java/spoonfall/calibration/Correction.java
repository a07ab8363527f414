package spoonfall.calibration;

import java.util.List;
import java.util.Locale;

/**
 * How to make a thermometer's readings true: {@code true = shown + offset + slope * (shown - at)}. One point gives
 * an offset, two a line.
 *
 * @param points one or two comparisons, the hotter one first
 */
public record Correction(List<Point> points) {
    /** A thermometer this far out is not corrected: it is broken, or something else was measured. */
    public static final double MOST_C = 6;

    private static final double LEAST_APART_C = 50;

    /** Validates that the points can be a calibration. */
    public Correction {
        points = List.copyOf(points);
        if (points.isEmpty() || points.size() > 2) {
            throw new IllegalArgumentException("a calibration has one point or two, not " + points.size());
        }
        for (Point point : points) {
            if (Math.abs(point.correctionC()) > MOST_C) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "a thermometer that shows %.1f °C at %.1f °C is not out by a little: check its unit and its sensor",
                        point.shownC(),
                        point.reference().temperatureC()));
            }
        }
        if (points.size() == 2 && !(points.get(0).shownC() - points.get(1).shownC() >= LEAST_APART_C)) {
            throw new IllegalArgumentException("the two points must be at least 50 °C apart, the hotter one first");
        }
    }

    /** The true temperature in °C for one that is shown. */
    public double trueC(double shownC) {
        Point hot = points.get(0);
        return shownC + hot.correctionC() + slope() * (shownC - hot.shownC());
    }

    /** Standard uncertainty in °C of {@link #trueC} at a shown temperature, from the points alone. */
    public double uncertaintyC(double shownC) {
        Point hot = points.get(0);
        if (points.size() == 1) {
            return hot.uncertaintyC();
        }
        Point cold = points.get(1);
        double part = (shownC - cold.shownC()) / (hot.shownC() - cold.shownC());
        return Math.hypot(part * hot.uncertaintyC(), (1 - part) * cold.uncertaintyC());
    }

    /**
     * How far {@link #trueC} may be off at a shown temperature, in °C, 19 times of 20. Beside one point a sensor of a
     * class may drift off by a hundredth of its limit a degree; between two points the line holds.
     *
     * @param classLimitC the limit of the sensor's class in °C
     */
    public double half95C(double shownC, double classLimitC) {
        if (points.size() == 2) {
            return 2 * uncertaintyC(shownC);
        }
        Point hot = points.get(0);
        return hot.half95C() + classLimitC / 100 * Math.abs(shownC - hot.shownC());
    }

    /** What is added at the hotter point, in °C. */
    public double offsetC() {
        return points.get(0).correctionC();
    }

    private double slope() {
        if (points.size() == 1) {
            return 0;
        }
        Point hot = points.get(0);
        Point cold = points.get(1);
        return (hot.correctionC() - cold.correctionC()) / (hot.shownC() - cold.shownC());
    }
}
