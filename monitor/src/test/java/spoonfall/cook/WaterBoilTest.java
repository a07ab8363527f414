package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

final class WaterBoilTest {
    @Test
    void theStandardSeaLevelPressure_givesWhatTheElevationAloneGives() {
        WaterBoil reported = WaterBoil.atSeaLevelPressure(101_325, 1240);
        assertThat(reported.temperatureC())
                .isEqualTo(WaterBoil.atElevation(1240).temperatureC(), Offset.offset(1e-9));
        assertThat(reported.doubtC()).isLessThan(WaterBoil.atElevation(1240).doubtC());
    }

    @Test
    void fifteenHectopascalsOfWeather_areTheDoubtOfAnElevation() {
        double high = WaterBoil.atSeaLevelPressure(101_325 + 1_500, 0).temperatureC();
        double low = WaterBoil.atSeaLevelPressure(101_325 - 1_500, 0).temperatureC();
        assertThat((high - low) / 2).isEqualTo(WaterBoil.atElevation(0).doubtC(), Offset.offset(0.03));
    }

    @Test
    void aMeasuredBoil_carriesThePressureThatGoesWithIt() {
        WaterBoil measured = WaterBoil.measured(96.687, 0.05);
        // 900 hPa: 96.687 °C, from IF97 by the project's science notes.
        assertThat(measured.pressurePa()).isEqualTo(90_000, Offset.offset(5.0));
        assertThat(measured.doubtC()).isEqualTo(Math.hypot(0.05, 0.1), Offset.offset(1e-9));
        assertThatThrownBy(() -> WaterBoil.measured(60, 0)).hasMessageContaining("water does not boil at 60.0 °C");
    }

    @Test
    void aKitchensOwnPressure_isTakenAsItIs() {
        // 900 hPa: 96.687 °C, from IF97 by the project's science notes.
        assertThat(WaterBoil.atPressure(90_000).temperatureC()).isEqualTo(96.687, Offset.offset(6e-4));
    }
}
