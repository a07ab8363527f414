package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoonfall.words.Saying;

final class NewsworthyTest {
    private final Newsworthy newsworthy = new Newsworthy();

    private boolean news(String state, String act) {
        return newsworthy.isNews(new Saying(state, act, ""));
    }

    @Test
    void aCountdown_isNewsAtTenFiveAndTwoMinutesOnly() {
        assertThat(news("Boiling.", "Too early to say when it will set.")).isTrue();
        assertThat(news("Climbing steadily.", "Set tests in 15 to 25 minutes.")).isTrue();
        List<Integer> said = java.util.stream.IntStream.iterate(14, minutes -> minutes >= 2, minutes -> minutes - 1)
                .filter(minutes -> news("Climbing steadily.", "Set tests in about " + minutes + " minutes."))
                .boxed()
                .toList();
        assertThat(said).containsExactly(10, 5, 2);
        assertThat(news("Climbing steadily.", "Set tests in about a minute.")).isFalse();
        assertThat(news("Climbing steadily.", "Set tests any moment now.")).isFalse();
        assertThat(news("Close to setting.", "Test the set.")).isTrue();
    }

    @Test
    void aForecastThatGoesBack_isNotSaidAgain() {
        assertThat(news("Climbing steadily.", "Set tests in about 10 minutes.")).isTrue();
        assertThat(news("Climbing steadily.", "Set tests in about 12 minutes.")).isFalse();
        assertThat(news("Climbing steadily.", "Set tests in about 10 minutes.")).isFalse();
        assertThat(news("Climbing steadily.", "Set tests in about 4 minutes.")).isTrue();
    }

    @Test
    void ofARange_itsMiddleCounts() {
        assertThat(news("Climbing steadily.", "Set tests in about 12 minutes.")).isTrue();
        assertThat(news("Climbing steadily.", "Set tests in 5 to 40 minutes.")).isFalse();
        assertThat(news("Climbing steadily.", "Set tests in 5 to 15 minutes.")).isTrue();
        assertThat(news("Climbing steadily.", "Set tests within 15 minutes.")).isFalse();
        assertThat(news("Climbing steadily.", "Set tests within 10 minutes.")).isTrue();
    }

    @Test
    void whatIsOnlyMoreThanSoMuch_isNoNews() {
        assertThat(news("Climbing steadily.", "Set tests in about 12 minutes.")).isTrue();
        assertThat(news("Climbing steadily.", "Set tests in more than 5 minutes."))
                .isFalse();
        assertThat(news("Climbing steadily.", "Set tests in about 10 minutes.")).isTrue();
    }

    @Test
    void anotherStateWithTheSameAct_isNoNews() {
        assertThat(news("Climbing steadily.", "Set tests in about 12 minutes.")).isTrue();
        assertThat(news("Climbing slowly.", "Set tests in about 12 minutes.")).isFalse();
    }

    @Test
    void withoutAnAct_theStateIsWhatMatters() {
        assertThat(news("Warming up.", "")).isTrue();
        assertThat(news("Warming up.", "")).isFalse();
        assertThat(news("Coming to the boil.", "")).isTrue();
    }
}
