package spoonfall.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.DoubleStream;

/**
 * The figures of many cooks. In quantiles a missing forecast counts as an infinite error, and a fault that was
 * not found as an infinite delay.
 *
 * <p>A figure of no cooks at all is NaN, so that it cannot be taken for a good one.
 *
 * @param cooks the scores that they are made of, in the order of their names
 */
public record Scorecard(List<CookScore> cooks) {
    /**
     * Forecasts so many minutes ahead.
     *
     * @param minutesAhead how many
     * @param count in how many cooks one could be judged
     * @param missing in how many of those the monitor gave none
     * @param errors by method
     * @param covered share of the given ones whose 90 % interval holds the truth
     * @param widthS median width of that interval
     */
    public record Horizon(
            int minutesAhead,
            int count,
            int missing,
            Map<CookScore.Method, Quantiles> errors,
            double covered,
            double widthS) {}

    /**
     * Two quantiles.
     *
     * @param median half are no larger
     * @param ninety nine in ten are no larger
     */
    public record Quantiles(double median, double ninety) {
        static Quantiles of(DoubleStream values) {
            double[] sorted = values.sorted().toArray();
            return new Quantiles(at(sorted, 0.5), at(sorted, 0.9));
        }

        /** The smallest value that so large a part of all does not exceed; NaN for none, as all figures of nothing are. */
        private static double at(double[] sorted, double part) {
            return sorted.length == 0 ? Double.NaN : sorted[(int) Math.ceil(part * sorted.length) - 1];
        }
    }

    /**
     * How one kind of fault was found.
     *
     * @param alarm the one that is for it
     * @param count how many there were
     * @param found how many were found while they lasted
     * @param delaysS how long that took
     */
    public record Found(String alarm, int count, int found, Quantiles delaysS) {
        /** The share that was found; NaN when there were none. */
        public double share() {
            return count == 0 ? Double.NaN : (double) found / count;
        }
    }

    /** Forecasts of the cooks that {@code which} accepts. */
    public List<Horizon> horizons(Predicate<CookScore> which) {
        List<Horizon> horizons = new ArrayList<>();
        for (int minutes : Scorer.HORIZONS) {
            List<CookScore.ForecastScore> scores = cooks.stream()
                    .filter(which)
                    .flatMap(cook -> cook.forecasts().stream())
                    .filter(score -> score.minutesAhead() == minutes)
                    .toList();
            horizons.add(horizon(minutes, scores));
        }
        return horizons;
    }

    private static Horizon horizon(int minutes, List<CookScore.ForecastScore> scores) {
        Map<CookScore.Method, Quantiles> errors = new TreeMap<>();
        for (CookScore.Method method : CookScore.Method.values()) {
            errors.put(
                    method,
                    Quantiles.of(scores.stream()
                            .mapToDouble(score -> Math.abs(score.error(method).orElse(Double.POSITIVE_INFINITY)))));
        }
        List<CookScore.ForecastScore> given =
                scores.stream().filter(score -> score.monitorS().isPresent()).toList();
        long covered = given.stream().filter(CookScore.ForecastScore::covered).count();
        Quantiles widths =
                Quantiles.of(given.stream().mapToDouble(score -> score.widthS().orElseThrow()));
        return new Horizon(
                minutes,
                scores.size(),
                scores.size() - given.size(),
                errors,
                given.isEmpty() ? Double.NaN : (double) covered / given.size(),
                widths.median());
    }

    /** How each kind of fault was found. */
    public List<Found> found() {
        List<Found> all = new ArrayList<>();
        for (String alarm : Truth.faults()) {
            List<OptionalDouble> delays = cooks.stream()
                    .flatMap(cook -> cook.detections().stream())
                    .filter(detection -> detection.alarm().equals(alarm))
                    .map(CookScore.Detection::delayS)
                    .toList();
            int found = (int) delays.stream().filter(OptionalDouble::isPresent).count();
            Quantiles quantiles =
                    Quantiles.of(delays.stream().mapToDouble(delay -> delay.orElse(Double.POSITIVE_INFINITY)));
            all.add(new Found(alarm, delays.size(), found, quantiles));
        }
        return all;
    }

    /** Hours that were watched, in the cooks that {@code which} accepts. */
    public double hours(Predicate<CookScore> which) {
        return cooks.stream().filter(which).mapToDouble(CookScore::watchedS).sum() / 3600;
    }

    /** How many false alarms of each name. */
    public Map<String, Long> falseAlarms(Predicate<CookScore> which, Predicate<CookScore.FalseAlarm> counts) {
        Map<String, Long> byName = new TreeMap<>();
        cooks.stream()
                .filter(which)
                .flatMap(cook -> cook.falseAlarms().stream())
                .filter(counts)
                .forEach(alarm -> byName.merge(alarm.alarm(), 1L, Long::sum));
        return byName;
    }

    /** False alarms in a hundred hours of the cooks that {@code which} accepts; NaN for no hours. */
    public double falseAlarmsPer100Hours(Predicate<CookScore> which) {
        long all = cooks.stream()
                .filter(which)
                .mapToLong(cook -> cook.falseAlarms().size())
                .sum();
        double hours = hours(which);
        return hours == 0 ? Double.NaN : 100 * all / hours;
    }

    /** In how many cooks the test window truly opened. */
    public long windows(Predicate<CookScore> which) {
        return cooks.stream().filter(which).filter(CookScore::hasWindow).count();
    }

    /** The share of cooks whose window opened in which set tests were called for in time. */
    public double windowsInTime(Predicate<CookScore> which) {
        long inTime =
                cooks.stream().filter(which).filter(CookScore::windowInTime).count();
        return windows(which) == 0 ? Double.NaN : (double) inTime / windows(which);
    }

    /** How far set tests were called for from the truth, sign left out. */
    public Quantiles windowErrorsS(Predicate<CookScore> which) {
        return Quantiles.of(cooks.stream()
                .filter(which)
                .filter(CookScore::hasWindow)
                .mapToDouble(cook -> Math.abs(cook.windowErrorS().orElse(Double.POSITIVE_INFINITY))));
    }

    /** In how many cooks the gel point was called too early, on a reading that a fault made wrong or on a true one. */
    public long gelTooEarly(boolean onAWrongReading) {
        return cooks.stream()
                .filter(CookScore::gelTooEarly)
                .filter(cook -> cook.gelOnAWrongReading() == onAWrongReading)
                .count();
    }

    /** The most calls, alarms and prompts alike, that any clean cook made in ten minutes. */
    public int mostCallsInCleanCooks() {
        return mostInCleanCooks(CookScore::mostCalls);
    }

    /** The most alarms that any clean cook raised in ten minutes. */
    public int mostAlarmsInCleanCooks() {
        return mostInCleanCooks(CookScore::mostAlarms);
    }

    private int mostInCleanCooks(ToIntFunction<CookScore> count) {
        return cooks.stream().filter(CookScore::clean).mapToInt(count).max().orElse(0);
    }

    /** The worst first: by missed faults, false alarms and early calls, then by the error ten minutes ahead. */
    public List<CookScore> worst(int count) {
        return cooks.stream()
                .sorted((a, b) -> Double.compare(badness(b), badness(a)))
                .limit(count)
                .toList();
    }

    private static double badness(CookScore cook) {
        long missed = cook.detections().stream()
                .filter(found -> found.delayS().isEmpty())
                .count();
        long failures = missed + cook.falseAlarms().size() + (cook.gelTooEarly() ? 1 : 0);
        double errorS = cook.forecasts().stream()
                .filter(score -> score.minutesAhead() <= 10)
                .mapToDouble(score -> Math.abs(score.monitorS().orElse(3600)))
                .max()
                .orElse(0);
        return failures * 3600.0 + Math.min(3600, errorS);
    }
}
