package spoonfall.cook.signal;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.Pace;
import spoonfall.series.Peaks;
import spoonfall.series.RobustLine;
import spoonfall.series.Selection;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/**
 * Turns readings at any pace into {@link Signals} once a second: the readings of a second become their
 * median, the middle half of the latest seconds is the level, and lines and heights are laid through that.
 */
public final class Senses {
    private static final double HEARD_LATELY_S = 5;

    /** Nearly ten minutes. */
    private static final double PEAK_S = 599;

    private final Pace pace;
    private final Track seconds = new Track(60);
    private final Track points = new Track(PEAK_S);
    private final Peaks peaks = new Peaks(PEAK_S);

    /** Those of the points that are older than the quick line. */
    private final Peaks earlierPeaks = new Peaks(PEAK_S);

    /** Time of the oldest point that is not one of them yet. */
    private double youngT = Double.POSITIVE_INFINITY;

    private final ThermometerStep step = new ThermometerStep();
    private double[] bucket = new double[16];
    private int inBucket;
    private final Slots slots = new Slots();
    private double peakFromT = Double.NEGATIVE_INFINITY;
    private Optional<RobustLine> quick = Optional.empty();
    private Optional<RobustLine> steady = Optional.empty();

    /** Of a thermometer that has not spoken yet, and will at such a pace. */
    public Senses(Pace pace) {
        this.pace = pace;
    }

    /** Takes a good reading of the second that is running. */
    public void accept(double temperatureC) {
        if (!pace.shows()) {
            inBucket = 0; // who types again within the second means the latter
        }
        if (inBucket == bucket.length) {
            bucket = Arrays.copyOf(bucket, 2 * inBucket);
        }
        bucket[inBucket++] = temperatureC;
        step.accept(temperatureC);
    }

    /** Forgets the way here: what comes does not go on from it, as when the probe is back in the pan. */
    public void restart() {
        newRegime();
        seconds.clear();
    }

    /** The pan moves otherwise from now on: no line goes on from before. */
    public void newRegime() {
        points.clear();
        peaks.clear();
        earlierPeaks.clear();
        youngT = Double.POSITIVE_INFINITY;
        quick = Optional.empty();
        steady = Optional.empty();
    }

    /** What was seen so far was hotter than the pan: it has not fallen from there. */
    public void forgetPeak(double t) {
        peakFromT = t;
    }

    /** Ends the second before {@code t}; empty while nothing was ever read. */
    public Optional<Signals> endSecond(double t) {
        if (inBucket > 0) {
            seconds.add(t - 0.5, Selection.median(bucket, inBucket));
            inBucket = 0;
        }
        OptionalDouble level = seconds.middleSince(t - pace.levelS(), pace.levelLeast());
        if (level.isEmpty()) {
            return Optional.empty();
        }
        double levelC = level.getAsDouble();
        growOlder(t);
        boolean heardLately = seconds.newestT().orElseThrow() > t - HEARD_LATELY_S;
        if (heardLately && slots.begins(t)) {
            points.add(t, levelC);
            peaks.add(t, levelC);
            youngT = Math.min(youngT, t);
            quick = points.lineSince(t - pace.quickS(), t, quick);
            steady = points.lineSince(t - pace.steadyS(), t, steady);
        }
        double latelyC = Math.max(peaks.highestSince(t - pace.quickS(), levelC), levelC);
        double earlierPeakC = earlierPeaks.highestSince(t - PEAK_S, latelyC);
        double peakC = peakFromT <= t - PEAK_S
                ? Math.max(earlierPeakC, latelyC)
                : Math.max(levelC, peaks.highestSince(peakFromT, levelC));
        return Optional.of(new Signals(t, levelC, trendC(t, levelC), quick, steady, peakC, earlierPeakC, step.c()));
    }

    /** Makes earlier points of those that the quick line has left behind. */
    private void growOlder(double t) {
        while (youngT <= t - pace.quickS()) {
            earlierPeaks.add(youngT, points.valueAt(youngT).orElseThrow());
            youngT = points.nextAfter(youngT);
        }
    }

    private double trendC(double t, double levelC) {
        if (steady.isEmpty()) {
            return levelC;
        }
        RobustLine line = steady.get();
        double trendC = line.atEnd() + line.slope() * (pace.carriedT(t, line.endX()) - line.endX());
        return Math.abs(trendC - levelC) > pace.jumpC() ? levelC : trendC;
    }
}
