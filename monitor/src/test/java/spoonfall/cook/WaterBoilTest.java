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

    @Test
    void whatWasMeasured_mayBe75To105Degrees() {
        assertThat(WaterBoil.measured(75, 0).temperatureC()).isEqualTo(75);
        assertThat(WaterBoil.measured(105, 0).temperatureC()).isEqualTo(105);
        assertThatThrownBy(() -> WaterBoil.measured(74.9, 0)).hasMessageContaining("75 to 105 °C");
        assertThatThrownBy(() -> WaterBoil.measured(105.1, 0)).hasMessageContaining("75 to 105 °C");
    }

    @Test
    void everyBoil_saysWhatItIsFrom() {
        assertThat(WaterBoil.atElevation(1240).detail()).isEqualTo("1,240 m above sea level");
        assertThat(WaterBoil.atElevation(1240).elevationM()).hasValueCloseTo(1240.0, Offset.offset(0.1));
        assertThat(WaterBoil.atPressure(89_812).detail()).isEqualTo("898 hPa on the barometer");
        assertThat(WaterBoil.atPressure(89_812).elevationM()).isEmpty();
        assertThat(WaterBoil.atSeaLevelPressure(101_600, 1240).detail())
                .isEqualTo("a report of 1,016 hPa at sea level, at 1,240 m");
        assertThat(WaterBoil.From.SEA_LEVEL_PRESSURE.wireName()).isEqualTo("sea-level-pressure");
    }

    @Test
    void aRise_isOneToFifteenDegrees_andTheWindowBelowIt() {
        WaterBoil boil = WaterBoil.standard();
        assertThat(new CookSettings(boil, CookSettings.LEAST_RISE_C, 0.1).riseC())
                .isEqualTo(1);
        assertThat(new CookSettings(boil, CookSettings.MOST_RISE_C, 15).windowC())
                .isEqualTo(15);
        assertThatThrownBy(() -> new CookSettings(boil, 0.9)).hasMessageContaining("1 to 15 °C");
        assertThatThrownBy(() -> new CookSettings(boil, 15.1)).hasMessageContaining("1 to 15 °C");
        assertThatThrownBy(() -> new CookSettings(boil, 4, 0)).hasMessageContaining("set tests cannot begin");
        assertThatThrownBy(() -> new CookSettings(boil, 4, 15.1)).hasMessageContaining("set tests cannot begin");
    }
}
