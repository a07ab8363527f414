package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoonfall.cook.Forecast;

final class CalmForecastTest {
    private final CalmForecast calm = new CalmForecast();

    private CalmForecast.Shown settle(double t, Forecast forecast) {
        return calm.settle(t, Optional.of(forecast), OptionalDouble.empty()).orElseThrow();
    }

    private static double[] spots(CalmTime.Shown shown) {
        return new double[] {shown.t(), shown.fromT(), shown.untilT()};
    }

    @Test
    void theWindowsInterval_isItsPartOfTheGelPoints() {
        CalmForecast.Shown shown = settle(100, new Forecast(600, 900, 720, 1170, 0.01));
        assertThat(spots(shown.gel())).containsExactly(1000, 820, 1270);
        assertThat(spots(shown.window())).containsExactly(700, 580, 880);
    }

    @Test
    void whereTheGelPointIsDueNow_theWindowIsTooAndNotLater() {
        CalmForecast.Shown shown = settle(100, new Forecast(0, 0, 0, 120, 0.01));
        assertThat(spots(shown.gel())).containsExactly(100, 100, 220);
        assertThat(spots(shown.window())).containsExactly(100, 100, 100);
    }

    @Test
    void bothStayWhileTheNewsWobbles_untilThereIsNoForecast() {
        CalmForecast.Shown before = settle(100, new Forecast(600, 900, 720, 1170, 0.01));
        CalmForecast.Shown wobbled = settle(101, new Forecast(640, 940, 760, 1210, 0.01));
        assertThat(wobbled.window().t()).isEqualTo(before.window().t());
        assertThat(wobbled.gel().t()).isEqualTo(before.gel().t());
        assertThat(calm.settle(101, Optional.empty(), OptionalDouble.empty())).isEmpty();
        CalmForecast.Shown anew = settle(102, new Forecast(640, 940, 760, 1210, 0.01));
        assertThat(anew.window().t()).isEqualTo(742);
        assertThat(anew.gel().t()).isEqualTo(1042);
    }

    @Test
    void whoCountsFromEarlier_seesTheSameLater() {
        CalmForecast.Shown shown = settle(100, new Forecast(600, 900, 720, 1170, 0.01));
        CalmForecast.Shown later = shown.later(40);
        assertThat(spots(later.gel())).containsExactly(1040, 860, 1310);
        assertThat(spots(later.window())).containsExactly(740, 620, 920);
        assertThat(later.gel().howLong()).isEqualTo(shown.gel().howLong());
        assertThat(later.window().howLong()).isEqualTo(shown.window().howLong());
    }

    @Test
    void theNextTest_staysToo_untilNobodyKnowsWhenItIs() {
        Optional<Forecast> forecast = Optional.of(new Forecast(600, 900, 720, 1170, 0.01));
        assertThat(nextTestT(100, forecast, OptionalDouble.of(700))).contains(800.0);
        assertThat(nextTestT(101, forecast, OptionalDouble.of(720))).contains(800.0);
        assertThat(nextTestT(102, forecast, OptionalDouble.empty())).isEmpty();
        assertThat(nextTestT(103, forecast, OptionalDouble.of(720))).contains(823.0);
    }

    private Optional<Double> nextTestT(double t, Optional<Forecast> forecast, OptionalDouble inS) {
        return calm.settle(t, forecast, inS)
                .flatMap(CalmForecast.Shown::nextTest)
                .map(CalmTime.Shown::t);
    }
}
