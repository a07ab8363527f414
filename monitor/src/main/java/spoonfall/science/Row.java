package spoonfall.science;

import java.util.Locale;
import java.util.Optional;

/**
 * One published value and ours.
 *
 * @param point where it holds, such as "66 %"
 * @param published the value, with the digits it was published with
 * @param ours the same as the physics gives it
 * @param curve where it lies on the syrup curve, for a rise
 */
public record Row(String point, String published, double ours, Optional<OnCurve> curve) {
    private static final int FEWEST_DECIMALS = 2;

    /**
     * A place on the syrup curve.
     *
     * @param solids the fraction of sugar
     * @param doubtC the curve's standard deviation there, in °C
     */
    public record OnCurve(double solids, double doubtC) {}

    /** Refuses a published value that is no number. */
    public Row {
        if (!Double.isFinite(Double.parseDouble(published)) || !Double.isFinite(ours)) {
            throw new IllegalArgumentException(point + " must have two finite numbers, not " + published + ", " + ours);
        }
    }

    static Row of(String point, String published, double ours) {
        return new Row(point, published, ours, Optional.empty());
    }

    /** The published value as a number. */
    public double publishedValue() {
        return Double.parseDouble(published);
    }

    /** Ours less the published one. */
    public double difference() {
        return ours - publishedValue();
    }

    /** The difference in standard deviations of the curve, where it is a rise. */
    public Optional<Double> doubts() {
        return curve.map(place -> difference() / place.doubtC());
    }

    String oursText() {
        return text(ours);
    }

    String differenceText() {
        return text(difference());
    }

    private String text(double value) {
        int point = published.indexOf('.');
        int decimals = point < 0 ? 0 : published.length() - point - 1;
        return fixed(value, Math.max(decimals, FEWEST_DECIMALS));
    }

    /** A number with so many decimals, and never a negative zero. */
    static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }
}
