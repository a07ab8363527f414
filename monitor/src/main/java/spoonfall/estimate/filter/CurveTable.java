package spoonfall.estimate.filter;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function of one variable by cubics between equally spaced points, each with the function's value and slope at both
 * its ends (cubic Hermite interpolation, any textbook): it is asked thousands of times a second, and costs far more to work out.
 */
final class CurveTable {
    private static final int COEFFICIENTS = 4;
    private static final int NEWTON_STEPS = 2;

    private final double from;
    private final double width;
    private final double perWidth;
    private final int parts;

    /** Of each part the cubic's coefficients, lowest power first; its variable goes from 0 to 1. */
    private final double[] cubics;

    /**
     * Tabulates {@code value} from {@code from} to {@code to}.
     *
     * @param slope the derivative of {@code value}, by the variable and the value there
     */
    CurveTable(double from, double to, int parts, DoubleUnaryOperator value, DoubleBinaryOperator slope) {
        this.from = from;
        this.parts = parts;
        width = (to - from) / parts;
        perWidth = 1 / width;
        cubics = new double[COEFFICIENTS * parts];
        double beginValue = value.applyAsDouble(from);
        double beginSlope = slope.applyAsDouble(from, beginValue) * width;
        for (int i = 0; i < parts; i++) {
            double end = i + 1 == parts ? to : from + (i + 1) * width;
            double endValue = value.applyAsDouble(end);
            double endSlope = slope.applyAsDouble(end, endValue) * width;
            int at = COEFFICIENTS * i;
            cubics[at] = beginValue;
            cubics[at + 1] = beginSlope;
            cubics[at + 2] = 3 * (endValue - beginValue) - 2 * beginSlope - endSlope;
            cubics[at + 3] = 2 * (beginValue - endValue) + beginSlope + endSlope;
            beginValue = endValue;
            beginSlope = endSlope;
        }
    }

    /** The function at {@code x}, which lies within the table. */
    double value(double x) {
        int part = part(x);
        return value(part, place(x, part));
    }

    /** Its slope there. */
    double slope(double x) {
        int part = part(x);
        return slope(part, place(x, part)) * perWidth;
    }

    /** Where a function that grows everywhere has that value; the end of the table for one beyond it. */
    double inverse(double value) {
        int part = partOf(value);
        double begin = cubics[COEFFICIENTS * part];
        double place = inside((value - begin) / (value(part, 1) - begin));
        for (int i = 0; i < NEWTON_STEPS; i++) {
            place = inside(place - (value(part, place) - value) / slope(part, place));
        }
        return from + (part + place) * width;
    }

    /** Within a part, by branches that are guessed right: the next step need not wait for them, as it would for a minimum. */
    private static double inside(double place) {
        if (place < 0) {
            return 0;
        }
        return place > 1 ? 1 : place;
    }

    private double value(int part, double place) {
        int at = COEFFICIENTS * part;
        return cubics[at] + place * (cubics[at + 1] + place * (cubics[at + 2] + place * cubics[at + 3]));
    }

    private double slope(int part, double place) {
        int at = COEFFICIENTS * part;
        return cubics[at + 1] + place * (2 * cubics[at + 2] + place * 3 * cubics[at + 3]);
    }

    private int part(double x) {
        return Math.max(0, Math.min(parts - 1, (int) ((x - from) * perWidth)));
    }

    private double place(double x, int part) {
        return (x - from) * perWidth - part;
    }

    /** The last part that begins at or below {@code value}. */
    private int partOf(double value) {
        int low = 0;
        int high = parts;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (cubics[COEFFICIENTS * middle] <= value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
