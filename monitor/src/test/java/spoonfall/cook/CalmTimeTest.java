package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is news is a judgement (common practice, no source): 45 s, an eighth of the time to go, or a quarter minute at the end. */
final class CalmTimeTest {
    private final CalmTime calm = new CalmTime();

    @Test
    void aForecastThatWobbles_staysPut_andNewsMovesIt() {
        assertThat(calm.settle(100, 300)).isEqualTo(400);
        assertThat(calm.settle(110, 290 + 44)).isEqualTo(400);
        assertThat(calm.settle(110, 290 - 44)).isEqualTo(400);
        assertThat(calm.settle(110, 290 + 45)).isEqualTo(445);
        assertThat(calm.settle(110, 335 - 46)).isEqualTo(399);
    }

    @Test
    void farAhead_itTakesAnEighthOfTheTimeToGo() {
        calm.settle(0, 1000);
        assertThat(calm.settle(0, 1110)).isEqualTo(1000);
        assertThat(calm.settle(0, 1140)).isEqualTo(1140);
    }

    @Test
    void inTheLastTwoMinutes_aQuarterMinuteIsNews() {
        calm.settle(0, 110);
        assertThat(calm.settle(0, 119)).isEqualTo(110);
        assertThat(calm.settle(5, 120)).isEqualTo(110); // two minutes to go are not the last two
        assertThat(calm.settle(10, 114)).isEqualTo(110);
        assertThat(calm.settle(10, 115)).isEqualTo(125);
    }

    @Test
    void withoutAForecast_theNextIsTakenAsItIs() {
        calm.settle(0, 300);
        calm.forget();
        assertThat(calm.settle(1, 300)).isEqualTo(301);
    }
}
