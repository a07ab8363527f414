package spoonfall.estimate.warming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the warming tells of the water that will leave. */
final class WarmingTest {
    private static final double KG = 2.5;
    private static final double SOLIDS = 0.4;

    /** How near the heat is known, as a part of it, where the burner burns steadily. */
    private static final double NEAR = 0.03;

    private final Warming warming = new Warming();
    private final WarmingPan pan = new WarmingPan(KG, SOLIDS, warming::observe);

    /** 26.6 g a minute for each net kW: the project's mass balance, from IAPWS' latent heat. */
    @Test
    void aKilowatt_drivesOffTwentySixGramsAMinute() {
        pan.warm(1);
        assertThat(gramsPerMin()).isCloseTo(26.6, within(26.6 * NEAR));
    }

    /** The latent heat at 1 atm by an independent implementation of IAPWS-IF97 (com.hummeling:if97). */
    @Test
    void theLatentHeat_isThatOfIf97() {
        IF97 water = new IF97(IF97.UnitSystem.ENGINEERING);
        double bar = 1.01325;
        double latentKjPerKg =
                water.specificEnthalpySaturatedVapourP(bar) - water.specificEnthalpySaturatedLiquidP(bar);
        assertThat(Warming.LATENT_KJ_PER_KG).isCloseTo(latentKjPerKg, within(1.0));
    }

    @Test
    void warming_isKnownAfterTenSeconds_andForgottenAfterTenMinutes() {
        assertThat(warming.promise(0)).isEmpty();
        for (int second = 0; second < 10; second++) {
            warming.observe(second, -22 + second / 15.0, 4);
        }
        assertThat(warming.promise(9)).isPresent();
        assertThat(warming.promise(609)).isPresent();
        assertThat(warming.promise(610)).isEmpty();
    }

    /** Slow pans lose as much to vapour and sides as fast ones: a larger part of their heat. */
    @ParameterizedTest(name = "{0} kW")
    @ValueSource(doubles = {0.7, 1, 1.5, 2.2})
    void whatLeavesBeforeTheBoil_countsToTheHeat(double netKw) {
        pan.warm(netKw);
        assertThat(gramsPerMin()).isCloseTo(26.6 * netKw, within(26.6 * netKw * NEAR));
    }

    @Test
    void theSlowerItWarms_theLessItIsKnown() {
        Warming other = new Warming();
        new WarmingPan(KG, SOLIDS, other::observe).warm(2);
        pan.warm(0.7);
        assertThat(other.promise(pan.t).orElseThrow().doubt()).isBetween(0.06, 0.065);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isBetween(0.07, 0.08);
    }

    @ParameterizedTest(name = "to {0} kW")
    @ValueSource(doubles = {0.6, 1.8, 2.4})
    void aPanThatIsTurned_isKnownByItsLastPace_andDoubted(double thenKw) {
        pan.warm(atC -> atC < -13 ? 1.2 : thenKw);
        assertThat(gramsPerMin()).isCloseTo(26.6 * thenKw, within(26.6 * thenKw * 0.05));
        double turned = Math.log(thenKw / 1.2);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isBetween(Math.min(0.5, 0.6 * turned * turned), 0.5);
    }

    /** On for half of each minute: paces of 45 s are turned up and down all the time. */
    @ParameterizedTest(name = "{0} s after it went on")
    @ValueSource(ints = {0, 15, 30, 45})
    void aBurnerThatSwitches_isNotTakenForAKnob(int phaseS) {
        pan.warm(atC -> (pan.t + phaseS) % 60 < 30 ? 2 : 0);
        assertThat(gramsPerMin()).isCloseTo(26.6, within(2.6));
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isBetween(0.07, 0.2);
    }

    /** It rests for forty seconds ten degrees below the boil: what came after that is not its heat. */
    @Test
    void aBurnerThatRestsOnce_isNotTurnedDown() {
        double[] restsUntilT = {Double.NaN};
        pan.warm(atC -> {
            if (atC > -10 && Double.isNaN(restsUntilT[0])) {
                restsUntilT[0] = pan.t + 40;
            }
            return pan.t < restsUntilT[0] ? 0 : 3;
        });
        assertThat(gramsPerMin()).isBetween(0.5 * 3 * 26.6, 3 * 26.6);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isGreaterThan(0.15);
    }

    @Test
    void whatWarmsForAFewDegrees_isDoubted() {
        pan.riseC = -7;
        pan.warm(2);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isGreaterThan(0.2);
    }

    /** A probe that is put in late climbs to the pan in no time. */
    @Test
    void aProbeThatIsPutIn_isNoHeat() {
        for (double riseC = -39; riseC < pan.riseC; riseC += 1) {
            warming.observe(pan.t++, riseC, 60);
        }
        pan.warm(1);
        assertThat(gramsPerMin()).isCloseTo(26.6, within(26.6 * 0.05));
    }

    /** As once the sugar is dissolved: what was seen before the last degrees is the low flame's pace. */
    @Test
    void aPanThatIsTurnedUpJustBeforeTheBoil_isKnownByItsFastestPace() {
        pan.warm(0.7);
        pan.nearTheBoil(10);
        assertThat(gramsPerMin()).isCloseTo(26.6 * 10 / pan.perMinC(1), within(1.0));
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isCloseTo(0.5, within(0.01));
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {4, 7, 8})
    void aPanThatWarmsOnAsBefore_isKnownByWhatItDidBefore(double perMinC) {
        pan.warm(1);
        double before = gramsPerMin();
        double doubt = warming.promise(pan.t).orElseThrow().doubt();
        pan.nearTheBoil(perMinC);
        assertThat(gramsPerMin()).isEqualTo(before);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isEqualTo(doubt);
    }

    /** It switches on just there, as it did before. */
    @Test
    void aBurnerThatSwitches_isNotTurnedUpNearTheBoil() {
        pan.warm(atC -> pan.t % 60 < 30 ? 2 : 0);
        double before = gramsPerMin();
        pan.nearTheBoil(14);
        assertThat(gramsPerMin()).isEqualTo(before);
    }

    @Test
    void aReadingThatLeapsUpToTheBoil_isNoHeat() {
        pan.warm(0.7);
        double before = gramsPerMin();
        pan.nearTheBoil(60);
        assertThat(gramsPerMin() / before).isCloseTo(3, within(0.01));
    }

    @Test
    void aPanThatCoolsFromTheBoilAndWarmsAgain_isKnownByItsNewPace() {
        pan.warm(1.5);
        pan.nearTheBoil(10);
        pan.cool(-4, -15, 1.8);
        pan.warm(0.8);
        assertThat(gramsPerMin()).isCloseTo(26.6 * 0.8, within(26.6 * 0.8 * 0.05));
    }

    /** Fruit that simmers for twenty minutes before its sugar. */
    @Test
    void aLongWay_isRemembered_andDoubted() {
        pan.warm(1.2);
        double atOnce = gramsPerMin();
        pan.t += 1200;
        assertThat(warming.promise(pan.t)).isPresent();
        assertThat(gramsPerMin()).isBetween(0.75 * atOnce, atOnce);
        assertThat(warming.promise(pan.t).orElseThrow().doubt()).isEqualTo(0.5);
    }

    /** Its sugar goes in, melts over a low flame, and takes the pan eight degrees below the boil. */
    @Test
    void theLastDegreesAfterALongWay_areBelievedInPart() {
        Warming other = new Warming();
        WarmingPan sugared = new WarmingPan(KG, SOLIDS, other::observe);
        sugared.riseC = -8;
        sugared.warm(0.8);
        pan.warm(1.6);
        pan.t += 900;
        pan.riseC = -8;
        pan.warm(0.8);
        Warming.Promise alone = other.promise(sugared.t).orElseThrow();
        Warming.Promise both = warming.promise(pan.t).orElseThrow();
        assertThat(both.vPerU() / alone.vPerU()).isBetween(1.1, 1.5);
        assertThat(both.doubt()).isBetween(2 * alone.doubt(), 0.4);
    }

    @Test
    void aProbeThatIsPutIn_isNoLongWay() {
        for (double riseC = -39; riseC < -5; riseC += 1) {
            warming.observe(pan.t++, riseC, 60);
        }
        assertThat(warming.promise(pan.t)).isPresent();
        assertThat(warming.promise(pan.t + 700)).isEmpty();
    }

    /** What it will boil away. */
    private double gramsPerMin() {
        return 1000 * warming.promise(pan.t).orElseThrow().v(1 / SOLIDS) * KG * SOLIDS;
    }
}
