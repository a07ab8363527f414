package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spoonfall.cook.Forecast;

final class CalmForecastTest {
    private final CalmForecast calm = new CalmForecast();

    private static double[] spots(CalmTime.Shown shown) {
        return new double[] {shown.t(), shown.fromT(), shown.untilT()};
    }

    @Test
    void theWindowsInterval_isItsPartOfTheGelPoints() {
        CalmForecast.Shown shown = calm.settle(100, new Forecast(600, 900, 720, 1170, 0.01));
        assertThat(spots(shown.gel())).containsExactly(1000, 820, 1270);
        assertThat(spots(shown.window())).containsExactly(700, 580, 880);
    }

    @Test
    void whereTheGelPointIsDueNow_theWindowIsTooAndNotLater() {
        CalmForecast.Shown shown = calm.settle(100, new Forecast(0, 0, 0, 120, 0.01));
        assertThat(spots(shown.gel())).containsExactly(100, 100, 220);
        assertThat(spots(shown.window())).containsExactly(100, 100, 100);
    }

    @Test
    void bothStayWhileTheNewsWobbles_untilThereIsNoForecast() {
        CalmForecast.Shown before = calm.settle(100, new Forecast(600, 900, 720, 1170, 0.01));
        CalmForecast.Shown wobbled = calm.settle(101, new Forecast(640, 940, 760, 1210, 0.01));
        assertThat(wobbled.window().t()).isEqualTo(before.window().t());
        assertThat(wobbled.gel().t()).isEqualTo(before.gel().t());
        calm.forget();
        CalmForecast.Shown anew = calm.settle(102, new Forecast(640, 940, 760, 1210, 0.01));
        assertThat(anew.window().t()).isEqualTo(742);
        assertThat(anew.gel().t()).isEqualTo(1042);
    }
}
