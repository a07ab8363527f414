package spoonfall.kitchen.told;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spoonfall.cook.CookStatus;

/** The picture of the cook so far: its temperatures, thinned so that there are never too many to draw. */
public final class Climb {
    private static final int MOST = 1500;
    private static final double LONGEST_STEP_S = 60;

    private final List<Point> points = new ArrayList<>();
    private double everyS = 2;

    /**
     * Where the climb was.
     *
     * @param t seconds of the cook
     * @param temperatureC in °C; empty where the line breaks because nothing fresh was known
     */
    public record Point(double t, OptionalDouble temperatureC) {}

    /** Adds how the pan is, unless the points would be too close. */
    public void add(CookStatus status) {
        boolean breaks = status.temperatureC().isEmpty();
        if (!points.isEmpty()) {
            Point last = points.get(points.size() - 1);
            if (!breaks && last.temperatureC().isPresent() && status.t() - last.t() > LONGEST_STEP_S) {
                // Played so fast that the silence went by between two statuses.
                points.add(new Point(last.t() + everyS, OptionalDouble.empty()));
            }
            boolean lastBreaks = last.temperatureC().isEmpty();
            if (breaks ? lastBreaks : !lastBreaks && status.t() - last.t() < everyS) {
                return;
            }
        }
        points.add(new Point(status.t(), status.temperatureC()));
        if (points.size() > MOST) {
            thin();
        }
    }

    /** Adds what was read last, at the time when it was: between two readings by hand nothing is known. */
    public void addSeen(CookStatus status) {
        double lastT = points.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : points.get(points.size() - 1).t();
        status.seen()
                .filter(seen -> seen.t() > lastT)
                .ifPresent(seen -> points.add(new Point(seen.t(), OptionalDouble.of(seen.temperatureC()))));
    }

    /** Takes away what came after {@code t}. */
    public void cutAfter(double t) {
        points.removeIf(point -> point.t() > t);
    }

    /** The points so far, in order. */
    public List<Point> points() {
        return List.copyOf(points);
    }

    private void thin() {
        everyS *= 2;
        List<Point> kept = new ArrayList<>();
        double lastT = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            if (point.temperatureC().isEmpty() || point.t() - lastT >= everyS) {
                kept.add(point);
                lastT = point.t();
            }
        }
        points.clear();
        points.addAll(kept);
    }
}
