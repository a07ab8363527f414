package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;

/** How much room a call or a reminder needs is a judgement (common practice, no source). */
final class QuietTest {
    private final Quiet quiet = new Quiet();

    private boolean quiet(double t, Stage stage, double windowS) {
        quiet.follow(t, stage, Optional.of(new Forecast(windowS, windowS + 300, windowS + 200, windowS + 400, 0.01)));
        return quiet.isAt(t);
    }

    @Test
    void aMinuteAfterSomethingWasTold_andNotLonger() {
        assertThat(quiet.isAt(100)).isFalse();
        quiet.told(100);
        assertThat(quiet.isAt(100)).isTrue();
        assertThat(quiet.isAt(159)).isTrue();
        assertThat(quiet.isAt(160)).isFalse();
    }

    @Test
    void aMinuteBeforeTheSetTestsAndAMinuteAfterTheirCall() {
        assertThat(quiet(100, Stage.ROLLING_BOIL, 60)).isFalse();
        assertThat(quiet(101, Stage.ROLLING_BOIL, 59)).isTrue();
        assertThat(quiet(160, Stage.TEST_WINDOW, 0)).isTrue();
        assertThat(quiet(219, Stage.TEST_WINDOW, 0)).isTrue();
        assertThat(quiet(220, Stage.TEST_WINDOW, 0)).isFalse();
    }

    @Test
    void aForecastThatDoesNotComeTrue_holdsNothingUpForLong() {
        assertThat(quiet(100, Stage.ROLLING_BOIL, 30)).isTrue();
        assertThat(quiet(249, Stage.ROLLING_BOIL, 30)).isTrue();
        assertThat(quiet(250, Stage.ROLLING_BOIL, 30)).isFalse();
        assertThat(quiet(251, Stage.ROLLING_BOIL, 90)).isFalse();
        assertThat(quiet(252, Stage.ROLLING_BOIL, 30)).isTrue();
    }
}
