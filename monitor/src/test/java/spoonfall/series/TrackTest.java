package spoonfall.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The track against the plainest list that says the same. Times and values lie on a grid, so that every limit is met exactly. */
final class TrackTest {
    private static final double KEEP_S = 60;

    private record Point(double t, double value) {}

    private static OptionalDouble last(List<Point> points, DoublePredicate wanted) {
        return points.stream()
                .filter(point -> wanted.test(point.value()))
                .mapToDouble(Point::t)
                .reduce((a, b) -> b);
    }

    /** The mean of the middle half: a quarter is left out at either end, as {@link MiddleHalf} says. */
    private static OptionalDouble middle(List<Point> points) {
        double[] values = points.stream().mapToDouble(Point::value).toArray();
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(MiddleHalf.mean(values, values.length));
    }

    @RepeatedTest(20)
    void itSaysWhatAPlainListSays(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        Track track = new Track(KEEP_S);
        List<Point> list = new ArrayList<>();
        double t = 0;
        for (int i = 0; i < 400; i++) {
            t += random.nextInt(3);
            double value = random.nextInt(8);
            double oldest = t - KEEP_S;
            list.removeIf(point -> point.t() < oldest);
            list.add(new Point(t, value));
            track.add(t, value);
            check(track, list, t - random.nextInt(70), random.nextInt(9), t);
        }
    }

    /** As a second asks for its level: the window moves on a little each time, but for silences that outlast all that is remembered. */
    @RepeatedTest(20)
    void theMiddleOfTheLatest_isThatOfAPlainList_asTheyComeAndGo(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        int least = random.nextInt(5);
        double overS = 1 + random.nextInt(20);
        Track track = new Track(KEEP_S);
        List<Point> list = new ArrayList<>();
        double t = 0;
        for (int i = 0; i < 2000; i++) {
            t += random.nextInt(50) == 0 ? random.nextInt(200) : 1;
            if (random.nextInt(300) == 0) {
                track.clear();
                list.clear();
            }
            if (random.nextInt(10) > 0) {
                double oldest = t - KEEP_S;
                list.removeIf(point -> point.t() < oldest);
                list.add(new Point(t, random.nextInt(8) / 10.0));
                track.add(t, list.get(list.size() - 1).value());
            }
            double sinceT = t - overS;
            long since = list.stream().filter(point -> point.t() >= sinceT).count();
            int count = (int) Math.min(list.size(), Math.max(since, least));
            assertThat(track.middleSince(sinceT, least))
                    .as("run %d, point %d", run.getCurrentRepetition(), i)
                    .isEqualTo(middle(list.subList(list.size() - count, list.size())));
        }
    }

    private static void check(Track track, List<Point> list, double sinceT, double limit, double nowT) {
        double untilT = (sinceT + nowT) / 2;
        List<Point> since = list.stream().filter(point -> point.t() >= sinceT).toList();
        List<Point> within = since.stream().filter(point -> point.t() <= untilT).toList();
        List<Point> later = list.stream()
                .filter(point -> point.t() > sinceT && point.t() <= untilT)
                .toList();
        List<Point> before = list.stream().filter(point -> point.t() <= sinceT).toList();
        int least = (int) limit;
        List<Point> latest = list.subList(Math.max(0, list.size() - Math.max(since.size(), least)), list.size());
        assertThat(track.newestT()).hasValue(nowT);
        assertThat(track.oldestT()).hasValue(list.get(0).t());
        assertThat(track.nextAfter(sinceT)).isEqualTo(firstAfter(list, sinceT));
        assertThat(track.nextAfter(nowT)).isInfinite();
        assertThat(track.highestSince(sinceT)).isEqualTo(highest(since));
        assertThat(track.highestBetween(sinceT, untilT)).isEqualTo(highest(within));
        assertThat(track.middleBetween(sinceT, untilT)).isEqualTo(middle(later));
        assertThat(track.middleSince(sinceT, least)).isEqualTo(middle(latest));
        assertThat(track.valueAt(sinceT))
                .isEqualTo(before.stream().mapToDouble(Point::value).reduce((a, b) -> b));
        assertThat(track.latestAtLeast(limit)).isEqualTo(last(list, value -> value >= limit));
        assertThat(track.latestAtMost(limit)).isEqualTo(last(list, value -> value <= limit));
        boolean covered = !since.isEmpty() && nowT - since.get(0).t() >= (nowT - sinceT) / 2;
        assertThat(track.lineSince(sinceT, nowT, Optional.empty()))
                .isEqualTo(covered ? line(since, nowT) : Optional.empty());
    }

    private static double firstAfter(List<Point> points, double t) {
        return points.stream()
                .mapToDouble(Point::t)
                .filter(pointT -> pointT > t)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static OptionalDouble highest(List<Point> points) {
        return points.stream().mapToDouble(Point::value).max();
    }

    private static Optional<RobustLine> line(List<Point> points, double endT) {
        double[] times = points.stream().mapToDouble(Point::t).toArray();
        double[] values = points.stream().mapToDouble(Point::value).toArray();
        return RobustLine.through(times, values, 0, times.length, endT, Optional.empty(), new PairSlopes(), 0);
    }

    @Test
    void aTrackThatWasCleared_saysNothing() {
        Track track = new Track(KEEP_S);
        for (int i = 0; i < 200; i++) {
            track.add(i, i);
        }
        track.clear();
        assertThat(track.newestT()).isEmpty();
        assertThat(track.oldestT()).isEmpty();
        assertThat(track.nextAfter(0)).isInfinite();
        assertThat(track.highestSince(0)).isEmpty();
        assertThat(track.lineSince(0, 200, Optional.empty())).isEmpty();
        assertThat(track.middleSince(0, 3)).isEmpty();
        track.add(300, 1);
        assertThat(track.valueAt(300)).hasValue(1);
        assertThat(track.valueAt(299)).isEmpty();
    }
}
