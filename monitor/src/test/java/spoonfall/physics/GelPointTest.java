package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class GelPointTest {
    @ParameterizedTest
    @CsvSource({"0,220", "1000,218", "2000,216", "3000,214", "4000,212", "5000,211", "6000,209", "7000,207", "8000,205"
    })
    void gelPointByAltitude_isWithinEightTenthsOfThePublishedTable(double feet, double fahrenheit) {
        // USDA / National Center for Home Food Preservation, "Testing Jelly Without Added Pectin".
        double celsius = Water.boilingPointC(Air.pressurePa(feet * 0.3048)) + GelPoint.DEFAULT_RISE_C;
        assertThat(celsius * 1.8 + 32).isEqualTo(fahrenheit, Offset.offset(0.8));
    }
}
