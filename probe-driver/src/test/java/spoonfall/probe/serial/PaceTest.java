package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PaceTest {
    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

    /** Asks when due, without an answer, and returns the seconds from one question to the next. */
    private static List<Long> pauses(Pace pace, long startNanos, int count) {
        List<Long> pauses = new ArrayList<>();
        long askedNanos = startNanos;
        for (int i = 0; i < count; i++) {
            pace.silent(askedNanos);
            long wait = pace.waitNanos(askedNanos);
            pauses.add(wait / SECOND);
            askedNanos += wait;
        }
        return pauses;
    }

    /** Instants of a monotonic clock may be anything, and may overflow. */
    @ParameterizedTest
    @ValueSource(longs = {0, -5_000_000_000L, Long.MAX_VALUE - 2_000_000_000L})
    void aSilentOne_isAskedMoreAndMoreSeldomAndAtFullPaceWhenItAnswers(long start) {
        Pace pace = new Pace(false);
        pace.restart(start);
        assertThat(pace.waitNanos(start)).isZero();
        assertThat(pauses(pace, start, 9)).containsExactly(1L, 1L, 2L, 4L, 8L, 10L, 10L, 10L, 10L);
        pace.answered(start);
        assertThat(pace.waitNanos(start)).isEqualTo(SECOND);
        assertThat(pauses(pace, start, 3)).containsExactly(1L, 1L, 2L);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, Long.MAX_VALUE - 2_000_000_000L})
    void aSilentOneThatIsAlone_isAskedOnceASecond(long start) {
        Pace pace = new Pace(true);
        pace.restart(start);
        assertThat(pauses(pace, start, 100)).containsOnly(1L);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, Long.MAX_VALUE - 2_000_000_000L})
    void holding_onlyEverDelays(long start) {
        Pace pace = new Pace(false);
        pace.restart(start);
        pace.hold(start + 3 * SECOND);
        pace.hold(start + SECOND);
        assertThat(pace.waitNanos(start)).isEqualTo(3 * SECOND);
    }
}
