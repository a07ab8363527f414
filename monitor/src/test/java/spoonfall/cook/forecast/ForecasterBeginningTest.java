package spoonfall.cook.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Forecast;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.estimate.warming.PanPrior;

/** When a pan begins to be known, and what is known before it boils. */
final class ForecasterBeginningTest {
    private static final int WATCHED_S = 900;

    /** Where {@link MadePan} stands then, by its climb. */
    private static final double STANDS_C = 103;

    @Test
    void whatAPlanSays_countsAtFirst() {
        Forecaster told = MadePan.climbing(1.5, t -> 0).forecaster();
        told.expect(new PanPrior(2, 1, 0.12, 0.2));
        double with = boils(told).etaS();
        double without = boils(new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF)).etaS();
        assertThat(Math.abs(with - without)).isGreaterThan(60);
    }

    /** Lets it boil for a minute and a half after the first hundred seconds, and asks for the gel point. */
    private static Forecast boils(Forecaster forecaster) {
        for (int t = 100; t < 190; t++) {
            double c = 101.5 + MadePan.CLIMBS_PER_MIN_C * (t - 100) / 60;
            forecaster.accept(t, c);
            forecaster.endSecond(MadeSignals.at(t + 1, c), Stage.ROLLING_BOIL, t + 1 - 100);
        }
        return forecaster.forecast(190).orElseThrow();
    }

    /** Lets it warm for forty seconds before. */
    private static Forecast warmedAndBoils(double fromC, Stage stage, double perMinC) {
        Forecaster forecaster = new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF);
        for (int t = 60; t < 100; t++) {
            forecaster.endSecond(MadeSignals.moving(t, fromC + perMinC * (t - 60) / 60, perMinC), stage, 0);
        }
        return boils(forecaster);
    }

    @ParameterizedTest(name = "from {0} °C, {1}: {2}")
    @CsvSource({
        "54, WARMING, false",
        "60, WARMING, true",
        "90, COMING_TO_THE_BOIL, true",
        "96, COMING_TO_THE_BOIL, false",
        "90, TEST_WINDOW, false"
    })
    void howFastItWarmsShortlyBeforeTheBoil_tellsHowMuchWaterWillLeave(double fromC, Stage stage, boolean tells) {
        double slowS = warmedAndBoils(fromC, stage, 4).etaS();
        double fastS = warmedAndBoils(fromC, stage, 8).etaS();
        assertThat(slowS - fastS > 30).isEqualTo(tells);
        assertThat(slowS == fastS).isEqualTo(!tells);
    }

    @ParameterizedTest(name = "{0} s of boiling: {1}")
    @CsvSource({"14.9, false", "15, true"})
    void aPanThatBoilsAgain_isKnownOnceTheThermometerHasArrived(double boilingForS, boolean knows) {
        Forecaster known = MadePan.climbing(1.5, t -> 0).watch(WATCHED_S).forecaster();
        known.endSecond(MadeSignals.at(WATCHED_S, 97), Stage.COMING_TO_THE_BOIL, 0);
        assertThat(known.panC(WATCHED_S, Double.NaN)).isNaN();
        boil(known, Stage.ROLLING_BOIL, boilingForS);
        assertThat(!Double.isNaN(known.panC(WATCHED_S + 20, Double.NaN))).isEqualTo(knows);
    }

    @Test
    void aPanOffTheHeat_doesNotBeginToBeKnown() {
        Forecaster unknown = new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF);
        boil(unknown, Stage.OFF_THE_HEAT, 0);
        assertThat(unknown.panC(WATCHED_S + 20, Double.NaN)).isNaN();
        Forecaster onTheHeat = new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF);
        boil(onTheHeat, Stage.ROLLING_BOIL, 0);
        assertThat(onTheHeat.panC(WATCHED_S + 20, Double.NaN)).isNotNaN();
    }

    private static void boil(Forecaster forecaster, Stage stage, double boilingForS) {
        for (int t = WATCHED_S; t < WATCHED_S + 20; t++) {
            forecaster.accept(t, STANDS_C);
            forecaster.endSecond(MadeSignals.at(t + 1, STANDS_C), stage, boilingForS);
        }
    }
}
