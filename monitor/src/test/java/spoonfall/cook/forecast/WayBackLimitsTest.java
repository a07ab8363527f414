package spoonfall.cook.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Forecast;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;

/** A pan that boiled at some height, fell and warms again on a straight line: each limit of {@link WayBack} from both sides. */
final class WayBackLimitsTest {
    private static final double BOILED_C = 103;
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    /** When it would set were it back at the boil. */
    private static final Forecast ONCE_BACK = new Forecast(100, 300, 200, 500, 0.012);

    private final WayBack way = new WayBack(100);
    private OptionalDouble boiledAtC = OptionalDouble.of(BOILED_C);
    private double stepC = 0.1;
    private double heatPerMinC;
    private double t;
    private double c = BOILED_C;

    private void second() {
        t++;
        Signals at = MadeSignals.at(t, c);
        way.endSecond(
                new Signals(t, c, c, at.quick(), at.steady(), at.peakC(), at.earlierPeakC(), stepC),
                boiledAtC,
                () -> heatPerMinC);
    }

    /** It moves to a height by so much a minute. */
    private WayBackLimitsTest to(double untilC, double perMinC) {
        while (perMinC < 0 ? c > untilC + 1e-9 : c < untilC - 1e-9) {
            c += perMinC / 60;
            second();
        }
        return this;
    }

    private WayBackLimitsTest stand(int seconds, double atC) {
        c = atC;
        for (int i = 0; i < seconds; i++) {
            second();
        }
        return this;
    }

    private Optional<Forecast> forecast() {
        return way.forecast(t, Optional.of(ONCE_BACK));
    }

    @Test
    void aPanThatBoilsOn_isOnNoWayBack() {
        stand(60, BOILED_C);
        assertThat(way.warms()).isFalse();
        assertThat(forecast()).isEmpty();
    }

    @Test
    void theForecast_isThatOfThePanOnceBack_andTheWayThere() {
        stand(10, BOILED_C).to(100, -6).to(102, 3);
        double leftS = 60 * (BOILED_C - c) / 3;
        Forecast forecast = forecast().orElseThrow();
        assertThat(forecast.windowS()).isCloseTo(100 + leftS, EXACT);
        assertThat(forecast.etaS()).isCloseTo(300 + leftS, EXACT);
        // sooner by three tenths of the way left, later by seven: at the point up to five seconds ago
        assertThat(forecast.lowS()).isCloseTo(200 + 0.7 * leftS, Offset.offset(1e-6));
        assertThat(forecast.highS()).isCloseTo(500 + 1.7 * leftS, Offset.offset(1e-6));
        assertThat(forecast.perMinute()).isEqualTo(0.012);
        assertThat(way.forecast(t, Optional.empty())).isEmpty();
    }

    @ParameterizedTest(name = "{0} °C below in steps of {1} °C: {2}")
    @CsvSource({"0.89, 0.1, false", "0.91, 0.1, true", "1.1, 0.6, false", "1.3, 0.6, true", "0.91, 1, true"})
    void whatFellByLess_boilsOnOrWasStirred(double byC, double steps, boolean warms) {
        stepC = steps;
        stand(10, BOILED_C).stand(20, BOILED_C - byC).to(BOILED_C - 0.26, 1.5);
        // a coarse thermometer must show a step and a half before it has turned
        assertThat(way.warms()).isEqualTo(warms && byC - 0.26 > (steps < 1 ? 1.5 * steps : 0.5));
    }

    @ParameterizedTest(name = "{0} °C above its lowest in steps of {1} °C: {2}")
    @CsvSource({"0.49, 0.1, false", "0.55, 0.1, true", "0.85, 0.6, false", "0.95, 0.6, true", "0.55, 1, true"})
    void itHasTurned_whenItIsHalfADegreeAboveItsLowest(double byC, double steps, boolean warms) {
        stepC = steps;
        // slowly enough for a point every five seconds to meet the limit
        stand(10, BOILED_C).to(100, -6).to(100 + byC, 1.25).stand(0, c);
        boolean seen = way.warms();
        stand(5, c);
        assertThat(seen || way.warms()).isEqualTo(warms);
    }

    @ParameterizedTest(name = "{0} °C a minute: {1}")
    @CsvSource({"1.1, false", "1.3, true"})
    void slowerThanThat_noHobWarmsAPan(double perMinC, boolean warms) {
        stand(10, BOILED_C).to(100, -6).to(102, perMinC);
        assertThat(way.warms()).isEqualTo(warms);
    }

    @Test
    void atFirstItWarmsFasterAndFaster_andTheLastSecondsTell() {
        stand(10, BOILED_C).to(100, -6).to(100.6, 1).to(101.7, 4);
        // the last three points lie on the faster line, the two before not
        assertThat(forecast().orElseThrow().etaS()).isCloseTo(300 + 60 * (BOILED_C - c) / 4, Offset.offset(1.0));
    }

    @Test
    void whatIsSlowAtTheEnd_isJudgedByItsLast25Seconds() {
        stand(10, BOILED_C).to(98, -6).to(101, 4).to(101.2, 2);
        assertThat(forecast().orElseThrow().etaS()).isLessThan(300 + 60 * (BOILED_C - c) / 2.5);
    }

    @Test
    void theWay_takesTenMinutesAtMost() {
        stand(10, BOILED_C).to(85, -10).to(87, 1.3);
        assertThat(forecast().orElseThrow().etaS()).isBetween(300 + 594.0, 300 + 600.0);
    }

    @ParameterizedTest(name = "at {0} °C: {1}")
    @CsvSource({"100.9, false", "101, true"})
    void aPanSoThin_hasNoSugarYet(double boiledC, boolean warms) {
        boiledAtC = OptionalDouble.of(boiledC);
        stand(10, boiledC).to(97, -6).to(99, 3);
        assertThat(way.warms()).isEqualTo(warms);
    }

    @Test
    void beforeItWarms_itIsForeseenAsIfItWentBackNow_asLongAsATestMayTake() {
        heatPerMinC = 10;
        stand(10, BOILED_C).to(100, -6).stand(100, 100);
        Forecast forecast = forecast().orElseThrow();
        // by seven tenths of its heat, from a hob that is hot after a quarter of a minute
        double leftS = 15 + 60 * 3 / 7.0;
        assertThat(way.warms()).isFalse();
        assertThat(forecast.etaS()).isCloseTo(300 + leftS, EXACT);
        assertThat(forecast.lowS()).isCloseTo(200 + 0.7 * leftS, EXACT);
        assertThat(forecast.highS()).isCloseTo(500 + 1.7 * leftS, EXACT);
        stand(55, 100);
        assertThat(way.tells()).isFalse();
        assertThat(forecast()).isEmpty();
    }

    @ParameterizedTest(name = "heat for {0} °C a minute: {1}")
    @CsvSource({"1.7, false", "1.75, true"})
    void noPanIsForeseen_whoseHeatWouldNotWarmIt(double perMinC, boolean foreseen) {
        heatPerMinC = perMinC;
        stand(10, BOILED_C).to(100, -6);
        assertThat(way.tells()).isEqualTo(foreseen);
    }

    @Test
    void whereNothingIsKnownOfItsBoil_thereIsNoWayBack() {
        stand(10, BOILED_C).to(100, -6).to(102, 3);
        assertThat(way.warms()).isTrue();
        boiledAtC = OptionalDouble.empty();
        second();
        assertThat(way.warms()).isFalse();
    }

    @Test
    void onceItIsBack_timeCountsFromThere_forAMinute() {
        stand(10, BOILED_C).to(100, -6).to(BOILED_C - 0.3, 3);
        stand(1, BOILED_C - 0.2);
        assertThat(way.warms()).isTrue();
        assertThat(forecast()).contains(ONCE_BACK);
        stand(59, BOILED_C);
        assertThat(forecast().orElseThrow()).isEqualTo(new Forecast(41, 241, 141, 441, 0.012));
        assertThat(way.forecast(t, Optional.of(new Forecast(0, 30, 10, 40, 0.012))))
                .contains(new Forecast(0, 0, 0, 0, 0.012));
        stand(1, BOILED_C);
        assertThat(way.warms()).isFalse();
        stand(30, BOILED_C);
        assertThat(way.warms()).isFalse();
    }

    @ParameterizedTest(name = "{0} °C above: {1}")
    @CsvSource({"0.59, true", "0.6, false"})
    void whatComesBackMuchHigher_isAnotherPan(double aboveC, boolean warms) {
        stand(10, BOILED_C).to(100, -6).to(102.7, 3).stand(1, BOILED_C + aboveC);
        assertThat(way.warms()).isEqualTo(warms);
    }

    @Test
    void whatDipsAgainOnItsWay_warmsNoMore_untilItTurns() {
        stand(10, BOILED_C).to(100, -6).to(102, 3).to(99, -6);
        assertThat(way.warms()).isFalse();
        to(101, 3);
        assertThat(way.warms()).isTrue();
    }

    @Test
    void readingsThatBeginAnew_areOnNoWay() {
        stand(10, BOILED_C).to(100, -6).to(102, 3);
        way.restart();
        assertThat(way.warms()).isFalse();
        stand(5, 102).to(102.4, 3);
        assertThat(way.warms()).as("it has not turned since").isFalse();
    }

    @Test
    void readingsThatBeginAnew_haveNoPaceBefore() {
        stand(10, BOILED_C).to(100, -6).to(100.8, 3);
        way.restart();
        stand(4, 101).stand(5, 101.6);
        assertThat(way.warms()).isFalse();
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"102.75, false", "102.76, true"})
    void itIsBack_withinAQuarterOfADegree(double standsC, boolean back) {
        stand(10, BOILED_C).to(100, -6).to(102.7, 3).stand(30, standsC);
        assertThat(way.warms()).as("for a minute, if it is").isEqualTo(back);
    }
}
