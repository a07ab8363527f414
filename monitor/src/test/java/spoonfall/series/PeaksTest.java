package spoonfall.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The peaks against a track, which remembers every point. Times and values lie on a grid, so that every limit is met exactly. */
final class PeaksTest {
    private static final double KEEP_S = 60;

    @RepeatedTest(20)
    void theySayWhatATrackSays(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        Peaks peaks = new Peaks(KEEP_S);
        Track track = new Track(KEEP_S);
        double t = 0;
        for (int i = 0; i < 400; i++) {
            t += 1 + random.nextInt(3);
            double value = random.nextInt(run.getCurrentRepetition() + 2) - 0.05 * i;
            peaks.add(t, value);
            track.add(t, value);
            double sinceT = t - random.nextInt(70) + 2;
            assertThat(peaks.highestSince(sinceT, -99))
                    .isEqualTo(track.highestSince(sinceT).orElse(-99));
            double limit = random.nextInt(12) - 0.05 * i;
            assertThat(peaks.latestAtLeast(limit, -1))
                    .isEqualTo(track.latestAtLeast(limit).orElse(-1));
        }
    }

    @Test
    void peaksThatWereCleared_sayNothing() {
        Peaks peaks = new Peaks(KEEP_S);
        peaks.add(1, 5);
        peaks.clear();
        assertThat(peaks.highestSince(0, 7)).isEqualTo(7);
        assertThat(peaks.latestAtLeast(0, 8)).isEqualTo(8);
        peaks.add(2, 3);
        assertThat(peaks.highestSince(0, 7)).isEqualTo(3);
    }
}
