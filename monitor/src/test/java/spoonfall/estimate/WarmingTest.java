package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the warming tells of the water that will leave. */
final class WarmingTest {
    private static final double PER_MIN_C = 4;
    private static final double U = 2.5;

    /** 26.6 g a minute for each net kW: the project's mass balance, from IAPWS' latent heat. */
    @Test
    void aKilowatt_drivesOffTwentySixGramsAMinute() {
        assertThat(gramsPerMinKw()).isCloseTo(26.6, within(0.05));
    }

    /** The latent heat at 1 atm by an independent implementation of IAPWS-IF97 (com.hummeling:if97). */
    @Test
    void theLatentHeat_isThatOfIf97() {
        IF97 water = new IF97(IF97.UnitSystem.ENGINEERING);
        double bar = 1.01325;
        double latentKjPerKg =
                water.specificEnthalpySaturatedVapourP(bar) - water.specificEnthalpySaturatedLiquidP(bar);
        assertThat(latentKjPerKg).isCloseTo(2257, within(1.0));
        assertThat(gramsPerMinKw()).isCloseTo(60_000 / latentKjPerKg, within(0.02));
    }

    @Test
    void warming_isKnownAfterTenSeconds_andForgottenAfterTenMinutes() {
        Warming warming = new Warming();
        assertThat(warming.known(0)).isFalse();
        for (int t = 0; t < 10; t++) {
            warming.observe(t, -22 + t * PER_MIN_C / 60, PER_MIN_C);
        }
        assertThat(warming.known(9)).isTrue();
        assertThat(warming.known(609)).isTrue();
        assertThat(warming.known(610)).isFalse();
    }

    /** Half a kilowatt more goes off as vapour near the boil, e times less 20 °C below: as in both simulators. */
    @Test
    void theVapourThatLeavesBeforeTheBoil_countsToTheHeat() {
        double allPerMinC = 5;
        double vapourPerMinC = 1.2;
        Warming warming = new Warming();
        double riseC = -22;
        for (int t = 0; riseC < -4; t++) {
            double perMinC = allPerMinC - vapourPerMinC * Math.exp(riseC / 20);
            warming.observe(t, riseC, perMinC);
            riseC += perMinC / 60;
        }
        Warming steady = warmed(allPerMinC);
        assertThat(warming.v(U) / steady.v(U)).isCloseTo(1, within(0.03));
        assertThat(warming.doubt()).isGreaterThan(steady.doubt());
    }

    @Test
    void aPanThatIsTurnedUp_isKnownByItsLastPace() {
        Warming warming = new Warming();
        double riseC = -22;
        for (int t = 0; riseC < -4; t++) {
            double perMinC = riseC < -13 ? 2 : 4;
            warming.observe(t, riseC, perMinC);
            riseC += perMinC / 60;
        }
        assertThat(warming.v(U) / warmed(4).v(U)).isCloseTo(1, within(0.12));
        assertThat(warming.doubt()).isGreaterThan(0.3);
    }

    /** As once the sugar is dissolved: what was seen before the last degrees is the low flame's pace. */
    @Test
    void aPanThatIsTurnedUpJustBeforeTheBoil_isKnownByItsFastestPace() {
        Warming warming = warmed(2);
        nearsTheBoil(warming, 5);
        assertThat(warming.v(U) / warmed(5).v(U)).isCloseTo(1, within(0.01));
        assertThat(warming.doubt()).isCloseTo(0.5, within(0.01));
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {1.2, 2, 2.6})
    void aPanThatWarmsOnAsBefore_isKnownByWhatItDidBefore(double perMinC) {
        Warming warming = warmed(2);
        nearsTheBoil(warming, perMinC);
        assertThat(warming.v(U)).isEqualTo(warmed(2).v(U));
        assertThat(warming.doubt()).isEqualTo(warmed(2).doubt());
    }

    @Test
    void aReadingThatLeapsUpToTheBoil_isNoHeat() {
        Warming warming = warmed(2);
        nearsTheBoil(warming, 60);
        assertThat(warming.v(U) / warmed(2).v(U)).isCloseTo(3, within(0.01));
    }

    @Test
    void aPanThatCoolsFromTheBoilAndWarmsAgain_isKnownByItsNewPace() {
        Warming warming = warmed(2);
        nearsTheBoil(warming, 5);
        warming.observe(400, -5, 2);
        assertThat(warming.v(U) / warmed(2).v(U)).isCloseTo(1, within(0.01));
    }

    private static void nearsTheBoil(Warming warming, double perMinC) {
        for (double riseC = -4, t = 360; riseC < 0; riseC += perMinC / 60, t++) {
            warming.observe(t, riseC, perMinC);
        }
    }

    private static Warming warmed(double perMinC) {
        Warming warming = new Warming();
        for (double riseC = -22, t = 0; riseC < -4; riseC += perMinC / 60, t++) {
            warming.observe(t, riseC, perMinC);
        }
        return warming;
    }

    /** One kilogram of solids warms by 4 °C a minute; the heat that takes goes into boiling afterwards. */
    private static double gramsPerMinKw() {
        Warming warming = new Warming();
        for (int t = 0; t < 20; t++) {
            warming.observe(t, -22 + t * PER_MIN_C / 60, PER_MIN_C);
        }
        double kjPerKgK = 4.187 * (1 - 0.57 / U); // common practice, no source
        double kw = U * kjPerKgK * PER_MIN_C / 60;
        return 1000 * warming.v(U) / kw;
    }
}
