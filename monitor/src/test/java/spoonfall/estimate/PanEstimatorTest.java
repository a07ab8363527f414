package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.estimate.filter.Arrival;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Syrup;

/** Pans whose water leaves as it is told to, seen through the syrup's curve with a little noise. */
final class PanEstimatorTest {
    private static final double PRESSURE_PA = Air.SEA_LEVEL_PA;
    private static final double GEL_C = GelPoint.DEFAULT_RISE_C;
    private static final double STEP_C = 0.1;

    /** The worked marmalade of the NCHFP (citrus marmalade): 2.02 kg at 35 % in, about 46 g of water a minute. */
    private static final double MASS_KG = 2.02;

    private static final double SOLIDS = 0.35;
    private static final double WATER_KG_PER_MIN = 0.046;

    private final SplittableRandom random = new SplittableRandom(4);
    private final PanEstimator estimator = new PanEstimator(PRESSURE_PA, 0.1, false);

    private static double riseC(double u) {
        return Syrup.riseC(PRESSURE_PA, 1 / u, Syrup.TYPICAL_INVERTED);
    }

    private static double marmaladeU(double t) {
        return (MASS_KG - WATER_KG_PER_MIN * t / 60) / (MASS_KG * SOLIDS);
    }

    private static double setsAtU() {
        return 1 / Syrup.solids(PRESSURE_PA, GEL_C, Syrup.TYPICAL_INVERTED);
    }

    private static double marmaladeSetsT() {
        return 60 * MASS_KG * (1 - SOLIDS * setsAtU()) / WATER_KG_PER_MIN;
    }

    private void cook(double fromT, double toT, double everyS, DoubleUnaryOperator u) {
        show(fromT, toT, everyS, t -> riseC(u.applyAsDouble(t)));
    }

    private void show(double fromT, double toT, double everyS, DoubleUnaryOperator rise) {
        double second = Math.ceil(fromT);
        for (double t = fromT; t < toT; t += everyS) {
            while (second <= t) {
                estimator.endSecond(second, true, second > 30, false, STEP_C);
                second++;
            }
            double shown = rise.applyAsDouble(t) + 0.06 * random.nextGaussian();
            estimator.accept(t, Math.round(shown / STEP_C) * STEP_C);
        }
        estimator.endSecond(toT, true, true, false, STEP_C);
    }

    @Test
    void theWorkedMarmalade_takesAboutTwentyMinutes_andIsForeseenFromHalfway() {
        double setsT = marmaladeSetsT();
        assertThat(setsT / 60).as("NCHFP: about 20 minutes").isBetween(18.0, 22.0);
        cook(0, setsT / 2, 1, PanEstimatorTest::marmaladeU);
        Arrival arrival = estimator.arrival(setsT / 2, GEL_C).orElseThrow();
        assertThat(arrival.s()).isCloseTo(setsT / 2, within(0.15 * setsT / 2));
        assertThat(setsT / 2).isBetween(arrival.lowS(), arrival.highS());
    }

    @Test
    void fiveMinutesAhead_itIsWithinHalfAMinute() {
        double setsT = marmaladeSetsT();
        cook(0, setsT - 300, 1, PanEstimatorTest::marmaladeU);
        assertThat(estimator.arrival(setsT - 300, GEL_C).orElseThrow().s()).isCloseTo(300, within(30.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 5, 10})
    void howOftenTheThermometerSpeaks_mattersLittle(double everyS) {
        double setsT = marmaladeSetsT();
        cook(0, setsT - 420, everyS, PanEstimatorTest::marmaladeU);
        assertThat(estimator.arrival(setsT - 420, GEL_C).orElseThrow().s()).isCloseTo(420, within(75.0));
    }

    @Test
    void aGapOfThreeMinutes_isBridged() {
        double setsT = marmaladeSetsT();
        cook(0, setsT - 600, 1, PanEstimatorTest::marmaladeU);
        cook(setsT - 420, setsT - 300, 1, PanEstimatorTest::marmaladeU);
        assertThat(estimator.arrival(setsT - 300, GEL_C).orElseThrow().s()).isCloseTo(300, within(45.0));
    }

    @Test
    void heatTurnedDown_isFollowed() {
        double changeT = 780;
        DoubleUnaryOperator lower = t -> t < changeT ? marmaladeU(t) : marmaladeU(changeT + 0.6 * (t - changeT));
        double setsT = changeT + (marmaladeSetsT() - changeT) / 0.6;
        cook(0, changeT + 180, 1, lower);
        double leftS = setsT - changeT - 180;
        Arrival arrival = estimator.arrival(changeT + 180, GEL_C).orElseThrow();
        assertThat(arrival.s()).isCloseTo(leftS, within(0.3 * leftS));
        assertThat(leftS).isLessThan(arrival.highS());
    }

    @Test
    void aStirsDip_movesNothing() {
        double setsT = marmaladeSetsT();
        cook(0, setsT - 400, 1, PanEstimatorTest::marmaladeU);
        double before = estimator.arrival(setsT - 400, GEL_C).orElseThrow().s();
        cook(setsT - 400, setsT - 388, 1, t -> marmaladeU(t) + 0.25);
        cook(setsT - 388, setsT - 370, 1, PanEstimatorTest::marmaladeU);
        assertThat(estimator.arrival(setsT - 370, GEL_C).orElseThrow().s()).isCloseTo(before - 30, within(20.0));
        assertThat(estimator.still()).isFalse();
    }

    /** Its pace of half an hour ago is none to hold it against. */
    @Test
    void aPanWhoseHeatFadesToAQuarter_isNotStill_howeverCoarseTheThermometer() {
        double kg = MASS_KG;
        for (int t = 0; t < 3000; t++) {
            estimator.endSecond(t, true, t > 30, false, 0.5);
            kg -= 0.025 / 60 * Math.max(0.25, Math.min(1, 1 - (t - 600) / 1200.0));
            double shown = riseC(kg / (MASS_KG * SOLIDS)) + 0.06 * random.nextGaussian();
            estimator.accept(t, Math.round(shown / 0.5) * 0.5);
            assertThat(estimator.still()).as("after %d s", t).isFalse();
        }
    }

    /** Whoever stirs for half a minute makes a standstill of four dips otherwise. */
    @Test
    void longStirs_areNoStandstill() {
        cook(0, 900, 1, PanEstimatorTest::marmaladeU);
        for (double t = 900; t < 1200; t += 5) {
            double dipC = (t - 900) % 100 < 35 ? 0.5 : 0;
            show(t, t + 5, 1, at -> riseC(marmaladeU(at)) - dipC);
            assertThat(estimator.still()).as("after %.0f s", t).isFalse();
        }
    }

    @Test
    void theHeightsDoubt_growsWhileNothingIsHeard_andShrinksWithReadings() {
        cook(0, 300, 1, PanEstimatorTest::marmaladeU);
        double soon = estimator.riseDoubtC(300);
        assertThat(estimator.riseDoubtC(600)).isGreaterThan(1.3 * soon);
        cook(300, 600, 1, PanEstimatorTest::marmaladeU);
        assertThat(estimator.riseDoubtC(600)).isLessThan(soon);
    }

    @Test
    void aPanThatStopsClimbing_isStill_andOneThatIsThinIsNot() {
        double stopT = 900;
        cook(0, stopT + 300, 1, t -> marmaladeU(Math.min(t, stopT)));
        assertThat(estimator.still()).isTrue();
        PanEstimatorTest thin = new PanEstimatorTest();
        thin.cook(0, 900, 1, t -> 4.5);
        assertThat(thin.estimator.still()).isFalse();
    }

    @Test
    void aPanThatStopsClimbing_isCountedOnForHalfItsPace_beforeItIsStill() {
        double t = 900;
        cook(0, t, 1, PanEstimatorTest::marmaladeU);
        double stoppedU = marmaladeU(t);
        double partBefore = estimator.slowestPerMinC() / estimator.climbPerMinC();
        double leastPart = partBefore;
        while (!estimator.still()) {
            leastPart = Math.min(leastPart, estimator.slowestPerMinC() / estimator.climbPerMinC());
            cook(t, t + 1, 1, at -> stoppedU);
            t++;
        }
        assertThat(leastPart).isLessThan(0.6 * partBefore);
        assertThat(estimator.slowestPerMinC()).isZero();
        assertThat(estimator.climbPerMinC()).isPositive();
    }

    /** It stopped when nothing was made of its readings any more, and five minutes later they are there again. */
    @Test
    void aPanOfWhichNothingWasSeen_isStillOnceItIsSeenForAMinute() {
        cook(0, 900, 1, PanEstimatorTest::marmaladeU);
        cook(1200, 1250, 1, t -> marmaladeU(900));
        assertThat(estimator.still()).isFalse();
        cook(1250, 1290, 1, t -> marmaladeU(900));
        assertThat(estimator.still()).isTrue();
    }

    @Test
    void coldWater_isABeginningElsewhere() {
        double waterT = 800;
        double boilsT = waterT + 90;
        DoubleUnaryOperator watered = t -> marmaladeU(t - 90) + 0.2;
        double setsT = marmaladeSetsT() + 90 + 60 * 0.2 * MASS_KG * SOLIDS / WATER_KG_PER_MIN;
        cook(0, waterT, 1, PanEstimatorTest::marmaladeU);
        double backC = riseC(watered.applyAsDouble(boilsT));
        show(waterT, boilsT, 1, t -> backC - 8 * (boilsT - t) / 90);
        cook(boilsT, setsT - 300, 1, watered);
        assertThat(estimator.arrival(setsT - 300, GEL_C).orElseThrow().s()).isCloseTo(300, within(60.0));
    }

    /** A pan that turns on its way back from a test stands for a moment where it never boiled. */
    @Test
    void aPanThatComesBackToWhereItWas_goesOnFromThere() {
        double offT = 900;
        double offS = 130;
        double setsT = marmaladeSetsT() + offS;
        cook(0, offT, 1, PanEstimatorTest::marmaladeU);
        double wasC = riseC(marmaladeU(offT));
        show(offT, offT + offS, 1, t -> Math.max(wasC - 1.5, wasC - 0.9 * (offT + offS - t) / 20));
        cook(offT + offS, offT + offS + 60, 1, t -> marmaladeU(t - offS));
        double leftS = setsT - offT - offS - 60;
        assertThat(estimator.arrival(offT + offS + 60, GEL_C).orElseThrow().s()).isCloseTo(leftS, within(0.2 * leftS));
    }

    /** Fruit simmers, the sugar goes in, and the pan boils again, much hotter: nothing goes on from before. */
    @Test
    void aPanThatBoilsElsewhere_isBegunAnew_whenItHadFallenBelowTheBoil() {
        show(0, 400, 1, t -> 0.8);
        show(400, 460, 1, t -> 0.8 - 3 * Math.sin(Math.PI * (t - 400) / 60));
        cook(460, 640, 1, t -> marmaladeU(t + 340));
        double leftS = marmaladeSetsT() - 340 - 640;
        assertThat(estimator.arrival(640, GEL_C).orElseThrow().s()).isCloseTo(leftS, within(0.5 * leftS));
    }

    @Test
    void beforeItKnows_itSaysNothing() {
        assertThat(estimator.arrival(0, GEL_C)).isEmpty();
        cook(0, 40, 1, PanEstimatorTest::marmaladeU);
        assertThat(estimator.arrival(40, GEL_C)).isEmpty();
        estimator.endSecond(41, false, false, false, STEP_C);
        assertThat(estimator.knows()).isFalse();
    }
}
