package spoonfall.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SugarsTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-12);

    @Test
    void addedSugarAlone_isSucrose() {
        assertThat(Sugars.of(1, 0, 0.1, 0.5).inverted()).isZero();
    }

    @Test
    void fruitAlone_hasItsOwnShare() {
        assertThat(Sugars.of(0, 2, 0.125, 0.54).inverted()).isEqualTo(0.54, EXACT);
        assertThat(Sugars.of(0, 2, 0.125, 0.54).solidsKg()).isEqualTo(0.25, EXACT);
    }

    @Test
    void oranges_carryAboutAsMuchHexoseAsSucrose() {
        // McCance and Widdowson's The Composition of Foods, 7th edition: glucose 2.2, fructose 2.4, sugars 8.5 g.
        assertThat(Sugars.ORANGE_HEXOSE).isEqualTo(0.541, Offset.offset(0.001));
    }

    @Test
    void equalMassesOfSugarAndOranges_startWithOneTwentiethInverted() {
        // 21 CFR 150.140: orange 12.5 % soluble solids. By hand: 0.125 * 0.541 / 1.125.
        Sugars start = Sugars.of(1, 1, 0.125, Sugars.ORANGE_HEXOSE);
        assertThat(start.inverted()).isEqualTo(0.0601, Offset.offset(0.0001));
        assertThat(start.solidsKg()).isEqualTo(1.125, EXACT);
    }

    @Test
    void theStart_isWhatSyrupAndInversionTake() {
        double start = Sugars.of(1, 1, 0.125, Sugars.ORANGE_HEXOSE).inverted();
        double later = Inversion.after(start, 10, 102, 0.55, 3.2);
        assertThat(Syrup.riseC(101_325, 0.65, later)).isGreaterThan(Syrup.riseC(101_325, 0.65, start));
    }

    @ParameterizedTest
    @CsvSource({
        "-1,1,0.1,0.5",
        "1,-1,0.1,0.5",
        "1,1,1.1,0.5",
        "1,1,0.1,-0.5",
        "0,0,0.1,0.5",
        "0,1,0,0.5",
        "NaN,1,0.1,0.5",
        "1,Infinity,0.1,0.5"
    })
    void whatIsNoRecipe_isRefused(double addedKg, double fruitKg, double fruitSolids, double hexose) {
        assertThatThrownBy(() -> Sugars.of(addedKg, fruitKg, fruitSolids, hexose))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
