package spoonfall.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The climb of a cook: when, and how far above the water boil. Times never fall.
 *
 * @param times seconds of the cook
 * @param risesC rise above the water boil in °C
 */
@SuppressWarnings("ArrayRecordComponent") // two hours at ten a second: boxed numbers would take ten times the room
public record RiseLine(double[] times, double[] risesC) {
    private static final double GAP_S = 60;

    /** Readings by hand are minutes apart: no gap is in them. */
    private static final int GAP_STEPS = 5;

    /** Validates that both are as long. */
    public RiseLine {
        if (times.length != risesC.length) {
            throw new IllegalArgumentException(times.length + " times for " + risesC.length + " rises");
        }
    }

    /**
     * A point to draw.
     *
     * @param t seconds of the cook
     * @param riseC in °C; empty where the line breaks
     */
    public record Point(double t, OptionalDouble riseC) {}

    /** How many readings it has. */
    public int size() {
        return times.length;
    }

    /** Seconds of the cook at the last of them; 0 if there is none. */
    public double lastT() {
        return times.length == 0 ? 0 : times[times.length - 1];
    }

    /** The middle one of the readings between two moments, both included; empty if there are none. */
    public OptionalDouble middle(double fromS, double untilS) {
        int from = lowest(fromS);
        int to = lowest(untilS + 1e-6);
        if (from >= to) {
            return OptionalDouble.empty();
        }
        double[] near = Arrays.copyOfRange(risesC, from, to);
        Arrays.sort(near);
        return OptionalDouble.of(near[near.length / 2]);
    }

    /** The first reading that is not before a moment. */
    private int lowest(double t) {
        int at = Arrays.binarySearch(times, t);
        while (at > 0 && times[at - 1] >= t) {
            at--;
        }
        return at < 0 ? -at - 1 : at;
    }

    /** At most about so many points that look the same: of each stretch the lowest and the highest, and where it breaks. */
    public List<Point> thinned(int most) {
        List<Point> points = new ArrayList<>();
        double gapS = Math.max(GAP_S, GAP_STEPS * usualStepS());
        double stretchS = Math.max(1e-9, (lastT() - (size() == 0 ? 0 : times[0])) * 2 / most);
        for (int i = 0; i < size(); ) {
            if (i > 0 && times[i] - times[i - 1] > gapS) {
                points.add(new Point((times[i] + times[i - 1]) / 2, OptionalDouble.empty()));
            }
            int low = i;
            int high = i;
            int next = i + 1;
            while (next < size() && times[next] - times[i] < stretchS && times[next] - times[next - 1] <= gapS) {
                low = risesC[next] < risesC[low] ? next : low;
                high = risesC[next] > risesC[high] ? next : high;
                next++;
            }
            add(points, Math.min(low, high));
            if (low != high) {
                add(points, Math.max(low, high));
            }
            i = next;
        }
        return points;
    }

    private void add(List<Point> points, int i) {
        points.add(new Point(times[i], OptionalDouble.of(risesC[i])));
    }

    private double usualStepS() {
        if (size() < 2) {
            return 0;
        }
        double[] steps = new double[size() - 1];
        Arrays.setAll(steps, i -> times[i + 1] - times[i]);
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }
}
