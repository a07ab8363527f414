package spoonfall.cook.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Forecast;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;

/** What is known of a pan's water in the terms of one cook: where it is, how fast it climbs and when it sets. */
final class ForecasterTest {
    private static final int WATCHED_S = 900;

    /** Where {@link MadePan} stands then, by its climb. */
    private static final double STANDS_C = 103;

    private static final Offset<Double> EXACT = Offset.offset(1e-9);

    private final MadePan pan = MadePan.climbing(1.5, t -> 0).watch(WATCHED_S);
    private final Forecaster known = pan.forecaster();
    private final Forecaster unknown = new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF);

    private double panC() {
        return known.panC(WATCHED_S, Double.NaN);
    }

    @Test
    void ofAPanThatNeverBoiled_nothingIsKnown() {
        assertThat(unknown.forecast(1)).isEmpty();
        assertThat(unknown.forecastOnceBack()).isEmpty();
        assertThat(unknown.untilS(1, 4)).isEmpty();
        assertThat(unknown.panC(1, Double.NaN)).isNaN();
        assertThat(unknown.fellFromC()).isEmpty();
        assertThat(unknown.ahead(2)).isEmpty();
        assertThat(unknown.growsPerMin()).isZero();
        assertThat(unknown.expectedPerMinC(3)).isEmpty();
        assertThat(unknown.still() || unknown.cools() || unknown.misledUpwards())
                .isFalse();
        assertThat(unknown.climbsTooFast(MadeSignals.moving(1, 103, 9))).isFalse();
        assertThat(unknown.mayTakeLongerThan(0, 1, 100)).isFalse();
        assertThat(unknown.back(MadeSignals.at(1, 105))).isFalse();
        assertThat(unknown.boiledAtC(1, 103)).isEqualTo(103);
        assertThat(unknown.temperatureC(1, 103)).isEqualTo(103);
    }

    @Test
    void thePan_isWhereItsReadingsAre_andGoesOn() {
        assertThat(panC()).isCloseTo(STANDS_C, Offset.offset(0.1));
        assertThat(known.panC(WATCHED_S + 60, Double.NaN) - panC()).isCloseTo(0.1, Offset.offset(0.03));
        assertThat(known.expectedPerMinC(3).orElseThrow()).isCloseTo(0.1, Offset.offset(0.03));
        assertThat(known.noiseC()).isBetween(0.001, 0.1);
    }

    /** Nobody saw it warm: half a minute after the boil its pace is a guess, a quarter of an hour later it is known. */
    @Test
    void ofAPaceThatIsOnlyGuessed_littleIsCountedOn() {
        Forecaster guessed = MadePan.climbing(1.5, t -> 0).watch(60).forecaster();
        assertThat(guessed.leastPerMinC(2).orElseThrow())
                .isLessThan(0.6 * guessed.expectedPerMinC(2).orElseThrow());
        assertThat(known.leastPerMinC(3).orElseThrow())
                .isGreaterThan(0.95 * known.expectedPerMinC(3).orElseThrow());
        assertThat(unknown.leastPerMinC(3)).isEmpty();
    }

    @Test
    void theForecast_isOfTheGelPointAndOfTheWindowBelowIt() {
        Forecast forecast = known.forecast(WATCHED_S).orElseThrow();
        assertThat(forecast.etaS()).isBetween(400.0, 600.0);
        assertThat(forecast.etaS()).isEqualTo(known.untilS(WATCHED_S, 4).orElseThrow());
        assertThat(forecast.windowS()).isEqualTo(known.untilS(WATCHED_S, 3).orElseThrow());
        assertThat(forecast.lowS()).isLessThan(forecast.etaS());
        assertThat(forecast.highS()).isGreaterThan(forecast.etaS());
        assertThat(forecast.perMinute()).isPositive();
        assertThat(known.forecast(WATCHED_S + 10).orElseThrow().etaS())
                .as("ten seconds later it is ten seconds less")
                .isCloseTo(forecast.etaS() - 10, EXACT);
    }

    @Test
    void anotherGelPoint_countsAtOnce() {
        double etaS = known.forecast(WATCHED_S).orElseThrow().etaS();
        known.aim(new CookSettings(MadePan.SETTINGS.waterBoil(), 4.5, 0.5));
        Forecast forecast = known.forecast(WATCHED_S).orElseThrow();
        assertThat(forecast.windowS()).isEqualTo(etaS);
        assertThat(forecast.etaS()).isEqualTo(known.untilS(WATCHED_S, 4.5).orElseThrow());
    }

    @ParameterizedTest(name = "{0} °C from the pan, {1} °C a minute: {2}")
    @CsvSource({"-0.31, 0, false", "-0.29, 0, true", "2, 0, true", "-0.29, -0.11, false", "-0.29, -0.09, true"})
    void itIsBack_whenItIsAlmostWhereItWas_andDoesNotFall(double offC, double perMinC, boolean back) {
        assertThat(known.back(MadeSignals.moving(WATCHED_S, panC() + offC, perMinC)))
                .isEqualTo(back);
    }

    @ParameterizedTest(name = "read {0} °C from what is known")
    @CsvSource({"-0.59, 0", "0.59, 0", "-0.61, -0.61", "0.61, 0"})
    void thePansHeight_isWhatIsKnownWhereReadingsAgree_andNeverMoreThanThat(double readC, double expectedC) {
        double soonC = known.panC(WATCHED_S + 8, Double.NaN);
        assertThat(known.temperatureC(WATCHED_S, soonC + readC)).isCloseTo(soonC + expectedC, EXACT);
    }

    @ParameterizedTest(name = "seen {0} °C from what is known")
    @CsvSource({"-0.61, -0.61", "-0.59, 0", "0.59, 0", "0.61, 0.61"})
    void whereItBoiledUntilNow_isKnown_unlessSomethingElseWasSeen(double seenC, double expectedC) {
        assertThat(known.boiledAtC(WATCHED_S, panC() + seenC)).isCloseTo(panC() + expectedC, EXACT);
    }

    @Test
    void itMayTakeLonger_byTheDoubtOfItsHeight_orBecauseTheReadingsLieBelow() {
        assertThat(known.mayTakeLongerThan(240, WATCHED_S, 104)).isTrue();
        assertThat(known.mayTakeLongerThan(3600, WATCHED_S, 104)).isFalse();
        double slowestPerS = known.expectedPerMinC(3).orElseThrow() / 60;
        assertThat(known.mayTakeLongerThan(3600, WATCHED_S, 104 - 110 * slowestPerS))
                .isTrue();
        assertThat(known.mayTakeLongerThan(3600, WATCHED_S, 104 - 50 * slowestPerS))
                .isFalse();
        double untilS = known.untilS(WATCHED_S, 4).orElseThrow();
        assertThat(known.mayTakeLongerThan(untilS, WATCHED_S, 104))
                .as("the middle estimate is no longest")
                .isTrue();
    }

    @Test
    void aPanThatStandsStill_mayTakeForEver() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        assertThat(still.still()).isTrue();
        assertThat(still.cools()).isFalse();
        assertThat(still.mayTakeLongerThan(1e6, 1200, 104)).isTrue();
        assertThat(known.still()).isFalse();
    }

    @Test
    void aPanThatFalls_cools() {
        Forecaster cools = MadePan.climbing(1.5, 900, -0.8).watch(1100).forecaster();
        assertThat(cools.still()).isTrue();
        assertThat(cools.cools()).isTrue();
        assertThat(cools.fellFromC().orElseThrow()).isCloseTo(STANDS_C, Offset.offset(0.2));
        Forecast onceBack = cools.forecastOnceBack().orElseThrow();
        double untilS = known.forecast(WATCHED_S).orElseThrow().etaS();
        assertThat(onceBack.etaS()).isCloseTo(untilS, Offset.offset(120.0));
        assertThat(known.fellFromC()).isEmpty();
        assertThat(known.forecastOnceBack()).isEmpty();
    }

    @Test
    void whereItWillBe_isOnItsSteepeningCurve() {
        double perMinC = known.expectedPerMinC(3).orElseThrow();
        double thenC = known.ahead(5).orElseThrow().climbPerMinC();
        assertThat(thenC).isGreaterThan(perMinC);
        assertThat(known.growsPerMin()).isCloseTo(Math.log(thenC / perMinC) / 5, EXACT);
        assertThat(known.ahead(5).orElseThrow().riseC())
                .isCloseTo(STANDS_C - 100 + 5 * (perMinC + thenC) / 2, Offset.offset(0.1));
    }

    @ParameterizedTest(name = "{0} °C a minute: {1}")
    @CsvSource({"0.8, false", "0.81, true"})
    void itClimbsTooFast_byMoreThanEightTenthsAMinute(double perMinC, boolean tooFast) {
        assertThat(known.climbsTooFast(MadeSignals.moving(WATCHED_S, 103, perMinC)))
                .isEqualTo(tooFast);
        assertThat(known.climbsTooFast(MadeSignals.at(WATCHED_S, 103))).isFalse();
    }

    @Test
    void aPanThatClimbsFastByItself_climbsTooFastByNearlyTwiceThat() {
        Forecaster fast = MadePan.climbing(0.9, 0, 0.6).watch(240).forecaster();
        double perMinC = fast.expectedPerMinC(3).orElseThrow();
        assertThat(perMinC).isGreaterThan(0.5);
        assertThat(fast.climbsTooFast(MadeSignals.moving(240, 103, 1.79 * perMinC)))
                .isFalse();
        assertThat(fast.climbsTooFast(MadeSignals.moving(240, 103, 1.81 * perMinC)))
                .isTrue();
    }

    @ParameterizedTest(name = "{0} °C above water: boils like water {1}")
    @CsvSource({"-0.1, true", "0.69, true", "0.71, false"})
    void aPanThatBoilsLikeWater_isNotExpectedToClimb(double riseC, boolean expected) {
        assertThat(known.expectedPerMinC(riseC).orElseThrow() == 0).isEqualTo(expected);
        assertThat(unknown.expectedPerMinC(riseC).isPresent()).isEqualTo(expected);
    }

    @Test
    void afterTheLastMinuteIsDoubted_theReadingsAreHotterThanThePan() {
        double etaS = known.forecast(WATCHED_S).orElseThrow().etaS();
        known.doubtTheLastMinute();
        assertThat(known.misledUpwards()).isTrue();
        assertThat(known.temperatureC(WATCHED_S, 109)).isCloseTo(STANDS_C, Offset.offset(0.2));
        assertThat(known.temperatureC(WATCHED_S, 101)).isEqualTo(101);
        assertThat(known.forecast(WATCHED_S).map(Forecast::etaS)).isNotEqualTo(Optional.of(etaS));
    }

    @Test
    void whileItIsTested_noWaterLeaves_andOnceItIsBackTimeCounts() {
        double stoodC = panC();
        pause(known, 60, false);
        assertThat(known.panC(WATCHED_S + 60, Double.NaN)).isCloseTo(stoodC, Offset.offset(0.015));
        Forecaster back = MadePan.climbing(1.5, t -> 0).watch(WATCHED_S).forecaster();
        pause(back, 60, true);
        assertThat(back.panC(WATCHED_S + 60, Double.NaN) - stoodC).isCloseTo(0.1, Offset.offset(0.03));
    }

    private static void pause(Forecaster forecaster, int seconds, boolean back) {
        for (int t = WATCHED_S; t <= WATCHED_S + seconds; t++) {
            forecaster.accept(t, 95);
            forecaster.pause(t, back);
        }
    }

    @Test
    void whatIsSkipped_tellsNothing() {
        double soonC = known.panC(WATCHED_S + 30, Double.NaN);
        watch(known, forecaster -> forecaster.accept(WATCHED_S, 95));
        assertThat(known.panC(WATCHED_S + 30, Double.NaN)).isEqualTo(soonC);
    }

    private static void watch(Forecaster forecaster, Consumer<Forecaster> before) {
        before.accept(forecaster);
        forecaster.skip();
        forecaster.endSecond(MadeSignals.at(WATCHED_S + 6, STANDS_C), Stage.ROLLING_BOIL, WATCHED_S);
    }

    @Test
    void theSolids_areThoseOfItsRise() {
        assertThat(known.solids(0)).isCloseTo(0, Offset.offset(0.01));
        assertThat(known.solids(4.4)).isBetween(0.6, 0.7);
    }

    @Test
    void whatIsReadByHand_isThePan_whereItDoesNotAgreeWithWhatIsKnown() {
        Forecaster byHand = new Forecaster(MadePan.SETTINGS, Pace.BY_HAND);
        for (int t = 0; t <= 900; t++) {
            if (t % 60 == 0) {
                byHand.accept(t, 101.5 + 0.1 * t / 60);
            }
            byHand.endSecond(MadeSignals.at(t + 1, 101.5 + 0.1 * t / 60), Stage.ROLLING_BOIL, t);
        }
        double knownC = byHand.panC(901, Double.NaN);
        assertThat(byHand.temperatureC(901, knownC + 0.99)).isCloseTo(knownC, EXACT);
        assertThat(byHand.temperatureC(901, knownC + 1.01)).isCloseTo(knownC + 1.01, EXACT);
    }

    @Test
    void whereItIsJustAtTheGelPoint_itMayStillBeShortOfIt() {
        MadePan there = MadePan.climbing(1.5, t -> 0).watch(1490);
        assertThat(there.forecaster().mayTakeLongerThan(0, there.t(), 104.3)).isTrue();
        there.watch(1700);
        assertThat(there.forecaster().mayTakeLongerThan(0, there.t(), 104.3)).isFalse();
    }

    @Test
    void whatIsReadBeforeItIsBack_tellsNothing() {
        double soonC = known.panC(WATCHED_S + 30, Double.NaN);
        known.accept(WATCHED_S, 95);
        known.pause(WATCHED_S, true);
        known.endSecond(MadeSignals.at(WATCHED_S + 6, STANDS_C), Stage.ROLLING_BOIL, WATCHED_S);
        assertThat(known.panC(WATCHED_S + 30, Double.NaN)).isEqualTo(soonC);
    }

    /** A burner that pauses for twenty seconds of every minute, in which the reading sags by 0.8 °C. */
    private static double pausesC(double t) {
        double intoS = t % 60;
        return intoS < 20 ? -0.04 * intoS : Math.min(0, -0.8 + 0.08 * (intoS - 20));
    }

    @Test
    void betweenABurnersPauses_readingsMayLieLowerByTheirDepth() {
        MadePan sags = MadePan.climbing(1.5, ForecasterTest::pausesC).watch(1700);
        Forecaster forecaster = sags.forecaster();
        double soonC = forecaster.panC(1708, Double.NaN);
        assertThat(forecaster.temperatureC(1700, soonC - 0.8)).isEqualTo(soonC);
        assertThat(forecaster.mayTakeLongerThan(3600, 1700, 103.8)).isFalse();
        assertThat(MadePan.climbing(1.5, t -> 0).watch(1700).forecaster().mayTakeLongerThan(3600, 1700, 103.8))
                .isTrue();
    }
}
