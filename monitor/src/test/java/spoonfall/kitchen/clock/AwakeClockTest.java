package spoonfall.kitchen.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class AwakeClockTest {
    @Test
    void aSystemThatHidesHowLongItHasRun_isSpokenOf_whereItCouldSay() {
        assertThat(AwakeClock.blind("Linux", OptionalDouble.empty()).orElseThrow())
                .contains("/proc/uptime")
                .contains("sleeps");
        assertThat(AwakeClock.blind("Linux", OptionalDouble.of(3600))).isEmpty();
        assertThat(AwakeClock.blind("Mac OS X", OptionalDouble.empty())).isEmpty();
    }
}
