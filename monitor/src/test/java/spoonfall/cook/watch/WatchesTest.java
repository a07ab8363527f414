package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.CookSettings;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/** What each alarm of the pan waits for. The limits are those of {@link Watches}, judgements without a source. */
final class WatchesTest {
    private static final CookSettings SETTINGS = MadePan.SETTINGS;
    private static final double JUST_C = 0.001;
    private static final double LONG_S = 400;

    private final Watches watches = new Watches(SETTINGS);
    private final Forecaster knowsNothing = new Forecaster(SETTINGS, Pace.BY_ITSELF);

    /** The stages of a pan that boiled at {@code c} °C. */
    private static Stages boiled(double c) {
        Stages stages = new Stages(SETTINGS);
        for (int t = -30; t < 0; t++) {
            stages.follow(MadeSignals.at(t, c));
        }
        return stages;
    }

    private static Stages offTheHeat(double c) {
        Stages stages = boiled(c);
        stages.end();
        return stages;
    }

    /** For how many seconds from 0 on it is taken for a set test; all of them must be the first ones. */
    private int testedForS(Stages stages, Forecaster forecaster, DoubleFunction<Signals> signals) {
        int tested = 0;
        for (int t = 0; t < LONG_S; t++) {
            if (watches.setTest(stages, signals.apply(t), forecaster)) {
                assertThat(tested).isEqualTo(t);
                tested++;
            }
        }
        return tested;
    }

    @Test
    void theCallToTheTests_isForTheWindow_andUndecidedFourTenthsBelowIt() {
        double lowC = SETTINGS.windowFromC() - 0.4;
        assertThat(watches.startSetTests(Stage.TEST_WINDOW, MadeSignals.at(0, 103)))
                .isEqualTo(Condition.PRESENT);
        assertThat(watches.startSetTests(Stage.TEST_WINDOW, MadeSignals.at(0, lowC)))
                .isEqualTo(Condition.PRESENT);
        assertThat(watches.startSetTests(Stage.ROLLING_BOIL, MadeSignals.at(0, lowC + JUST_C)))
                .isEqualTo(Condition.UNDECIDED);
        assertThat(watches.startSetTests(Stage.ROLLING_BOIL, MadeSignals.at(0, lowC)))
                .isEqualTo(Condition.ABSENT);
        assertThat(watches.startSetTests(Stage.OFF_THE_HEAT, MadeSignals.at(0, lowC + JUST_C)))
                .isEqualTo(Condition.ABSENT);
    }

    @Test
    void theCallToTheTests_isForTheWindowThatIsAimedAt() {
        watches.aim(new CookSettings(SETTINGS.waterBoil(), 6, 1));
        assertThat(watches.startSetTests(Stage.ROLLING_BOIL, MadeSignals.at(0, 103)))
                .isEqualTo(Condition.ABSENT);
        assertThat(watches.startSetTests(Stage.ROLLING_BOIL, MadeSignals.at(0, 104.7)))
                .isEqualTo(Condition.UNDECIDED);
    }

    @ParameterizedTest(name = "from {0} °C: {1} s")
    @CsvSource({"100.999, 240", "101, 85", "102.5, 85", "102.501, 130", "103.5, 130"})
    void aPanOffTheHeat_isTestedForAsLongAsItsHeightAllows(double peakC, int seconds) {
        // no sugar in it yet; boiling; so near the window that a plate may be what it is off for
        DoubleFunction<Signals> falling = t -> MadeSignals.falling(t, peakC - 3, peakC, -1);
        assertThat(testedForS(offTheHeat(peakC > 103 ? 102 : peakC), knowsNothing, falling))
                .isEqualTo(seconds);
    }

    @Test
    void aPanThatReachedTheWindow_isTestedForTheTimeOfAPlate_howeverLowItsHeightOfLate() {
        DoubleFunction<Signals> falling = t -> MadeSignals.falling(t, 101, 102, -1);
        assertThat(testedForS(offTheHeat(103), knowsNothing, falling)).isEqualTo(130);
    }

    @ParameterizedTest(name = "{0} °C a minute: {1} s")
    @CsvSource({"-0.31, 130", "-0.3, 0", "0.1, 0"})
    void inTheWindow_whatCoolsFasterThanThreeTenthsIsTested_thoughItIsCalledBoiling(double perMinC, int seconds) {
        assertThat(testedForS(boiled(103), knowsNothing, t -> MadeSignals.falling(t, 103, 103.2, perMinC)))
                .isEqualTo(seconds);
    }

    @Test
    void shortOfTheWindow_aFallIsNoTest() {
        assertThat(testedForS(boiled(102), knowsNothing, t -> MadeSignals.falling(t, 102, 102.4, -1)))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {104, 105})
    void atTheGelPoint_aFallIsNoTest(double c) {
        assertThat(testedForS(boiled(c), knowsNothing, t -> MadeSignals.falling(t, c, c + 0.2, -1)))
                .isZero();
    }

    @Test
    void belowTheBoil_aFallIsNoTest() {
        Stages stages = boiled(103);
        for (int t = 0; t < 10; t++) {
            stages.follow(MadeSignals.at(t, 95));
        }
        assertThat(testedForS(stages, knowsNothing, t -> MadeSignals.falling(t, 95, 103, -1)))
                .isZero();
    }

    @Test
    void inTheWindow_whatIsKnownToCoolIsTested_howeverSlowlyItsReadingsFall() {
        Forecaster cools = MadePan.climbing(1.5, 900, -0.6).watch(1100).forecaster();
        assertThat(cools.cools()).isTrue();
        assertThat(testedForS(boiled(103), cools, t -> MadeSignals.falling(t, 103, 103.2, -0.1)))
                .isEqualTo(130);
        assertThat(testedForS(boiled(102), cools, t -> MadeSignals.falling(t, 102, 102.3, -0.1)))
                .isZero();
    }

    @Test
    void whoIsKnownToStandStill_isNotTestedShortOfTheWindow() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        assertThat(still.still()).isTrue();
        assertThat(testedForS(offTheHeat(102), still, t -> MadeSignals.falling(t, 101, 102, -1)))
                .isZero();
        assertThat(testedForS(offTheHeat(103), still, t -> MadeSignals.falling(t, 101, 103, -1)))
                .isEqualTo(130);
    }

    /** It is fruit that was turned down to simmer. */
    @Test
    void whatHasNoSugarYet_hasItsTime_evenIfItIsKnownToStandStill() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        assertThat(testedForS(offTheHeat(100.9), still, t -> MadeSignals.falling(t, 99, 100.9, -1)))
                .isEqualTo(240);
    }

    @Test
    void theTimeOfATest_beginsAnewWithEachTest() {
        Stages stages = offTheHeat(102);
        DoubleFunction<Signals> falling = t -> MadeSignals.falling(t, 100.5, 102, -1);
        assertThat(testedForS(stages, knowsNothing, falling)).isEqualTo(85);
        stages.goOn();
        assertThat(watches.setTest(stages, MadeSignals.at(500, 102), knowsNothing))
                .isFalse();
        stages.end();
        assertThat(watches.setTest(stages, falling.apply(600), knowsNothing)).isTrue();
        assertThat(watches.setTest(stages, falling.apply(684), knowsNothing)).isTrue();
        assertThat(watches.setTest(stages, falling.apply(685), knowsNothing)).isFalse();
    }

    /** It falls by 2 °C a minute, and is seen to be off the heat after a minute: eighty-five seconds and ten after it left its height. */
    @Test
    void aPanThatFellForLongBeforeItWasSeenOffTheHeat_isTestedForLess() {
        Stages stages = boiled(102);
        int testedUntilS = 0;
        for (int t = 0; t < LONG_S; t++) {
            if (t == 60) {
                stages.end();
            }
            boolean tested = watches.setTest(stages, MadeSignals.falling(t, 102 - t / 30.0, 102, -2), knowsNothing);
            testedUntilS = tested ? t : testedUntilS;
        }
        assertThat(testedUntilS).isBetween(95, 115);
    }

    @Test
    void theTimeOfATest_beginsAnewWhenTheReadingsDo() {
        Stages stages = offTheHeat(102);
        DoubleFunction<Signals> falling = t -> MadeSignals.falling(t, 100.5, 102, -1);
        testedForS(stages, knowsNothing, falling);
        watches.restart();
        assertThat(watches.setTest(stages, falling.apply(500), knowsNothing)).isTrue();
    }

    /** A pan that falls evenly, by 1 °C a minute. */
    private static Signals fallsEvenly(double t, double fromC, double peakC) {
        return MadeSignals.falling(t, fromC - t / 60, peakC, -1);
    }

    private Condition stalled(Stages stages, Signals now, Forecaster forecaster) {
        boolean tested = watches.setTest(stages, now, forecaster);
        return watches.stalled(stages, now, tested, false, forecaster);
    }

    @Test
    void aPanOffTheHeat_stallsWhenItsTestIsOver() {
        Stages stages = offTheHeat(102);
        for (int t = 0; t < 85; t++) {
            assertThat(stalled(stages, fallsEvenly(t, 101.5, 102), knowsNothing))
                    .isEqualTo(Condition.UNDECIDED);
        }
        Signals then = fallsEvenly(85, 101.5, 102);
        assertThat(stalled(stages, then, knowsNothing)).isEqualTo(Condition.PRESENT);
        assertThat(watches.stalled(stages, then, false, true, knowsNothing)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void aPanThatTurnsWhenItsTestIsOver_isNotCalled_unlessItFallsOn() {
        Stages stages = offTheHeat(102);
        for (int t = 0; t < 70; t++) {
            stalled(stages, fallsEvenly(t, 101.5, 102), knowsNothing);
        }
        double lowestC = 101.5 - 70 / 60.0;
        for (int t = 70; t < 120; t++) {
            Condition then = stalled(stages, MadeSignals.falling(t, lowestC, 102, -1), knowsNothing);
            assertThat(then).isEqualTo(Condition.UNDECIDED);
        }
        for (int t = 120; t < 145; t++) {
            stalled(stages, fallsEvenly(t, lowestC + 2, 102), knowsNothing);
        }
        assertThat(stalled(stages, fallsEvenly(145, lowestC + 2, 102), knowsNothing))
                .isEqualTo(Condition.PRESENT);
    }

    @ParameterizedTest(name = "from {0} °C, {1} s later: {2}")
    @CsvSource({
        "103.6, 170, PRESENT",
        "103.601, 170, UNDECIDED",
        "103.601, 180, PRESENT",
        "103.849, 180, PRESENT",
        "103.851, 170, UNDECIDED",
        "103.851, 180, ABSENT"
    })
    void whoTakesItOffSoCloseToTheGelPoint_mayMeanIt_andCloserDoes(double peakC, int laterS, Condition expected) {
        Stages stages = offTheHeat(103.5);
        for (int t = 0; t < laterS; t++) {
            stalled(stages, fallsEvenly(t, 101, peakC), knowsNothing);
        }
        Signals then = fallsEvenly(laterS, 101, peakC);
        assertThat(stalled(stages, then, knowsNothing)).isEqualTo(expected);
        watches.notSet();
        assertThat(stalled(stages, then, knowsNothing)).isEqualTo(Condition.PRESENT);
    }

    @Test
    void whoPutsItBackAfterAll_isToldThatItStandsStill() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        Stages stages = offTheHeat(103.5);
        stalled(stages, MadeSignals.falling(0, 103, 103.7, -1), still);
        stages.goOn();
        assertThat(stalled(stages, MadeSignals.at(1, 103.5), still)).isEqualTo(Condition.PRESENT);
    }

    @ParameterizedTest
    @EnumSource(names = {"AT_GEL_POINT", "PAST_GEL_POINT"})
    void atTheGelPoint_nothingStalls(Stage stage) {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        double c = stage == Stage.AT_GEL_POINT ? 104 : 105;
        assertThat(stalled(boiled(c), MadeSignals.at(0, c), still)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void aPanThatStandsStill_stallsWhileItBoils_butNotBefore() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        assertThat(stalled(boiled(102), MadeSignals.at(0, 102), still)).isEqualTo(Condition.PRESENT);
        assertThat(stalled(boiled(102), MadeSignals.at(1, 102), knowsNothing)).isEqualTo(Condition.ABSENT);
        Stages below = boiled(95);
        assertThat(stalled(below, MadeSignals.at(2, 95), still)).isEqualTo(Condition.ABSENT);
    }

    /** Stands at {@code fromC} for 100 s, then cools by 0.6 °C a minute; of its stage nothing is told. */
    private static Signals coolsSlowly(double t, double fromC) {
        double fallenC = Math.max(0, t - 100) * 0.6 / 60;
        return MadeSignals.falling(t, fromC - fallenC, fromC, t > 100 ? -0.6 : 0);
    }

    @ParameterizedTest(name = "from {0} °C: {1} s")
    @CsvSource({"102.4, 85", "102.6, 130"})
    void aPanThatCoolsSlowlyAndIsCalledBoiling_stallsSoLongAfterItLeftItsHeight(double fromC, int seconds) {
        Stages stages = boiled(102);
        // it is 0.8 °C down at 180 s, and its last point at least 0.35 °C above that is that of 140 or 145 s
        int seenT = -1;
        for (int t = 0; t < 500; t++) {
            Condition stalled = stalled(stages, coolsSlowly(t, fromC), knowsNothing);
            assertThat(watches.cools(coolsSlowly(t, fromC))).isEqualTo(t > 181);
            if (stalled == Condition.PRESENT && seenT < 0) {
                seenT = t;
            }
        }
        assertThat(seenT).isIn(140 + seconds + 1, 145 + seconds + 1);
    }

    @ParameterizedTest(name = "they begin anew: {0}")
    @ValueSource(booleans = {true, false})
    void readingsThatBeginAnewOrWereHotter_areNoFall(boolean anew) {
        Stages stages = boiled(102);
        for (int t = 0; t < 300; t++) {
            stalled(stages, coolsSlowly(t, 102.4), knowsNothing);
        }
        assertThat(watches.cools(coolsSlowly(300, 102.4))).isTrue();
        if (anew) {
            watches.restart();
        } else {
            watches.hotter(true);
        }
        assertThat(watches.cools(coolsSlowly(300, 102.4))).isFalse();
        assertThat(stalled(stages, coolsSlowly(300, 102.4), knowsNothing)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void whatCameDownFromAHotterBase_isNotSaidToStand_butMayFall() {
        Forecaster still = MadePan.climbing(0.5, 900, 0).watch(1200).forecaster();
        watches.hotter(true);
        assertThat(stalled(boiled(102), MadeSignals.at(0, 102), still)).isEqualTo(Condition.UNDECIDED);
        watches.hotter(false);
        assertThat(stalled(boiled(102), MadeSignals.at(1, 102), still)).isEqualTo(Condition.PRESENT);
        Stages stages = offTheHeat(102);
        for (int t = 0; t < 86; t++) {
            watches.hotter(true);
            stalled(stages, fallsEvenly(t, 101.5, 102), knowsNothing);
        }
        watches.hotter(true);
        assertThat(stalled(stages, fallsEvenly(86, 101.5, 102), knowsNothing)).isEqualTo(Condition.PRESENT);
    }

    @Test
    void aPanThatFellAndStays_isUndecided_andOneThatWarmsAgainIsNotStalled() {
        Stages stages = boiled(102);
        int t = 0;
        for (; t < 190; t++) {
            stalled(stages, coolsSlowly(t, 102.4), knowsNothing);
        }
        Signals stays = MadeSignals.falling(t, 101.5, 102.4, 0);
        assertThat(stalled(stages, stays, knowsNothing)).isEqualTo(Condition.UNDECIDED);
        stages.end();
        for (int i = 0; i < 90; i++) {
            stalled(stages, MadeSignals.falling(t + i, 101.5, 102.4, 0), knowsNothing);
        }
        assertThat(stalled(stages, MadeSignals.falling(t + 90, 101.5, 102.4, 0), knowsNothing))
                .isEqualTo(Condition.PRESENT);
        assertThat(stalled(stages, MadeSignals.falling(t + 91, 101.9, 102.4, 0), knowsNothing))
                .isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void scorchRisk_isForgottenWithTheWayHere() {
        MadePan pan = MadePan.climbing(1.5, 900, 3);
        pan.watch(960, now -> watches.scorchRisk(pan.stages(), now, pan.forecaster(), false));
        assertThat(watches.scorchRisk(pan.stages(), pan.now(), pan.forecaster(), false))
                .isEqualTo(Condition.PRESENT);
        assertThat(watches.scorchText().title()).contains("{");
        watches.restart();
        assertThat(watches.scorchRisk(pan.stages(), pan.now(), pan.forecaster(), false))
                .isEqualTo(Condition.UNDECIDED);
    }
}
