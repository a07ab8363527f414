package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

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
    void aKitchensOwnPressure_isTakenAsItIs() {
        // 900 hPa: 96.687 °C, from IF97 by the project's science notes.
        assertThat(WaterBoil.atPressure(90_000).temperatureC()).isEqualTo(96.687, Offset.offset(6e-4));
    }
}
