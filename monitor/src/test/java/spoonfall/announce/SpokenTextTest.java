package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SpokenTextTest {
    private static final Instant START = Instant.parse("2026-01-17T15:00:00Z");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "It has reached the setting point, {temp:100.4}.|It has reached the setting point, 100.4 degrees.|It has reached the setting point, 212.7 degrees.",
                "{diff:1.0} past|1 degree past|1.8 degrees past",
                "{diff:15} down since {clock:1320}|15 degrees down since 15:22|27 degrees down since 15:22",
                "{temp:1e400} {temp:} {oops:1} $1|{temp:1e400} {temp:} {oops:1} $1|{temp:1e400} {temp:} {oops:1} $1"
            })
    void marks_becomeWordsForAVoice(String marked, String celsius, String fahrenheit) {
        assertThat(new SpokenText(false, ZoneId.of("UTC")).of(marked, START)).isEqualTo(celsius);
        assertThat(new SpokenText(true, ZoneId.of("UTC")).of(marked, START)).isEqualTo(fahrenheit);
    }
}
