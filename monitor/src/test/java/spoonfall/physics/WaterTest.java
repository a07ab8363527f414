package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.hummeling.if97.IF97;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WaterTest {
    private static final double K = 273.15;

    @ParameterizedTest
    @CsvSource({"0.1,372.755919", "1,453.035632", "10,584.149488"})
    void boilingPoint_isThatOfIf97Table36(double megapascals, double kelvin) {
        // IAPWS R7-97 (2012), table 36: program verification values of the backward equation.
        assertThat(Water.boilingPointC(megapascals * 1e6) + K).isEqualTo(kelvin, Offset.offset(5e-7));
    }

    @ParameterizedTest
    @CsvSource({"300,0.00353658941", "500,2.63889776", "600,12.3443146"})
    void vapourPressure_isThatOfIf97Table35(double kelvin, double megapascals) {
        // IAPWS R7-97 (2012), table 35: program verification values of the saturation-pressure equation.
        double pascals = Water.saturationPressurePa(kelvin - K);
        assertThat(pascals / 1e6).isCloseTo(megapascals, Offset.offset(megapascals * 2e-9));
    }

    @Test
    void boilingPoint_agreesWithAnIndependentLibraryOverAllKitchens() {
        // com.hummeling:if97, an independent implementation of IF97.
        IF97 reference = new IF97(IF97.UnitSystem.SI);
        for (double pascals = 45_000; pascals <= 108_500; pascals += 250) {
            assertThat(Water.boilingPointC(pascals) + K)
                    .isEqualTo(reference.saturationTemperatureP(pascals), Offset.offset(1e-9));
        }
    }

    @Test
    void bothEquations_areEachOthersInverse() {
        for (double celsius = 1; celsius < 370; celsius += 0.7) {
            assertThat(Water.boilingPointC(Water.saturationPressurePa(celsius)))
                    .isEqualTo(celsius, Offset.offset(1e-8));
        }
    }

    @Test
    void boilingSlope_isTheBoilingPointsOwn() {
        for (double pascals = 1_000; pascals < 20e6; pascals *= 1.07) {
            double step = pascals * 1e-5;
            double across = (Water.boilingPointC(pascals + step) - Water.boilingPointC(pascals - step)) / (2 * step);
            assertThat(Water.boilingSlopeCPerPa(pascals)).isCloseTo(across, Offset.offset(across * 1e-5));
        }
    }

    @Test
    void boilingSlope_atSeaLevelIsThatOfTheProjectsNotes() {
        // Computed beforehand from IF97 by the project's science notes: 0.0277 K/hPa at one atmosphere.
        assertThat(Water.boilingSlopeCPerPa(101_325) * 100).isEqualTo(0.0277, Offset.offset(0.00005));
    }

    @ParameterizedTest
    @CsvSource({
        "1030,100.434",
        "1013.25,99.974",
        "1000,99.606",
        "980,99.042",
        "950,98.178",
        "900,96.687",
        "850,95.125",
        "800,93.485",
        "700,89.932"
    })
    void boilingPoint_isThatOfTheProjectsTable(double hectopascals, double celsius) {
        // Computed beforehand from IF97 by the project's science notes; holds our own numbers still.
        assertThat(Water.boilingPointC(hectopascals * 100)).isEqualTo(celsius, Offset.offset(6e-4));
    }

    @ParameterizedTest
    @CsvSource({"0,212.0", "1000,210.2", "2000,208.5", "3000,206.7", "4000,204.9"})
    void boilingPointByAltitude_isThatOfTheUsda(double feet, double fahrenheit) {
        // USDA, boiling point of water by altitude, as given with canning guidance; rounded to 0.1 °F, air not said.
        double celsius = Water.boilingPointC(Air.pressurePa(feet * 0.3048));
        assertThat(celsius * 1.8 + 32).isEqualTo(fahrenheit, Offset.offset(0.3));
    }

    @Test
    void forbesObservedBoilingPoints_agreeButForHisKnownOutlier() {
        // J. D. Forbes (1857): boiling point of water (°F) and barometer (inHg), as in the data set forbes of the R
        // package MASS. He read slightly high, as his thermometer's scale and gravity were not corrected.
        double[][] pairs = {
            {194.5, 20.79}, {194.3, 20.79}, {197.9, 22.4}, {198.4, 22.67}, {199.4, 23.15}, {199.9, 23.35},
            {200.9, 23.89}, {201.1, 23.99}, {201.4, 24.02}, {201.3, 24.01}, {203.6, 25.14}, {204.6, 26.57},
            {209.5, 28.49}, {208.6, 27.76}, {210.7, 29.04}, {211.9, 29.88}, {212.2, 30.06}
        };
        for (int i = 0; i < pairs.length; i++) {
            double computedF = Water.boilingPointC(pairs[i][1] * 3386.389) * 1.8 + 32;
            double difference = computedF - pairs[i][0];
            if (i == 11) {
                assertThat(difference).as("the outlier, row 12").isEqualTo(1.42, Offset.offset(0.01));
            } else {
                assertThat(difference).as("row %d", i + 1).isBetween(-0.405, -0.005);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "611", "3e7", "NaN", "-5"})
    void aPressureAtWhichNothingBoils_isRefusedByName(double pascals) {
        assertThatThrownBy(() -> Water.boilingPointC(pascals)).hasMessageContaining(String.valueOf(pascals));
    }

    @ParameterizedTest
    @CsvSource({"-1", "374", "NaN"})
    void aTemperatureAtWhichNothingBoils_isRefusedByName(double celsius) {
        assertThatThrownBy(() -> Water.saturationPressurePa(celsius)).hasMessageContaining(String.valueOf(celsius));
    }
}
