package spoonfall.cook.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Stage;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.signal.Signals;

/**
 * Where a cook is, by signals made by hand: each limit from both sides, each stage's time. Water boils at 100 °C here and the
 * preserve sets at 104 °C, so that every limit can be met exactly. The limits are those of {@link Stages}, a judgement.
 */
final class StagesTest {
    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.measured(100, 0), 4, 1);
    private static final double JUST_C = 0.001;

    private final Stages stages = new Stages(SETTINGS);
    private double t;

    /** Feeds what is so for that many seconds; says after how many of them the stage first changed, or -1. */
    private int follow(int seconds, DoubleFunction<Signals> signals) {
        int changed = -1;
        for (int i = 0; i < seconds; i++) {
            Stage before = stages.stage();
            boolean says = stages.follow(signals.apply(t));
            assertThat(says).isEqualTo(stages.stage() != before);
            if (says && changed < 0) {
                changed = i;
            }
            t++;
        }
        return changed;
    }

    private int stand(int seconds, double c) {
        return follow(seconds, at -> MadeSignals.at(at, c));
    }

    private Stage after(double c) {
        stand(100, c);
        return stages.stage();
    }

    @ParameterizedTest(name = "{0} °C: {1} after {2} s")
    @CsvSource({
        "50, WARMING, 5",
        "92, COMING_TO_THE_BOIL, 5",
        "100.4, ROLLING_BOIL, 20",
        "103, TEST_WINDOW, 3",
        "104, AT_GEL_POINT, 3",
        "105, PAST_GEL_POINT, 3"
    })
    void aStage_isEnteredWhenItHasLasted(double c, Stage expected, int seconds) {
        assertThat(stand(seconds, c)).isEqualTo(-1);
        assertThat(stages.stage()).isEqualTo(Stage.WAITING);
        assertThat(stand(1, c)).isZero();
        assertThat(stages.stage()).isEqualTo(expected);
    }

    @ParameterizedTest(name = "up to {0} °C")
    @CsvSource({
        "92, WARMING, COMING_TO_THE_BOIL",
        "103, ROLLING_BOIL, TEST_WINDOW",
        "104, TEST_WINDOW, AT_GEL_POINT",
        "105, AT_GEL_POINT, PAST_GEL_POINT"
    })
    void onTheWayUp_aLimitIsReachedWhenItIsMet(double limitC, Stage below, Stage from) {
        assertThat(after(limitC - JUST_C)).isEqualTo(below);
        assertThat(after(limitC)).isEqualTo(from);
    }

    @Test
    void itBoils_threeTenthsAboveTheBoilOfWater() {
        assertThat(after(100.3 - JUST_C)).isEqualTo(Stage.COMING_TO_THE_BOIL);
        assertThat(after(100.3 + JUST_C)).isEqualTo(Stage.ROLLING_BOIL);
    }

    @Test
    void aBoil_goesOnUntilHalfADegreeBelowTheBoilOfWater() {
        stand(30, 101);
        assertThat(after(99.5)).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(after(99.5 - JUST_C)).isEqualTo(Stage.COMING_TO_THE_BOIL);
    }

    @ParameterizedTest(name = "back below {0} °C")
    @CsvSource({"103, TEST_WINDOW, ROLLING_BOIL", "104, AT_GEL_POINT, TEST_WINDOW", "105, PAST_GEL_POINT, AT_GEL_POINT"
    })
    void onTheWayBack_aStageIsLeftFourTenthsLower(double limitC, Stage inside, Stage below) {
        assertThat(after(limitC)).isEqualTo(inside);
        assertThat(after(limitC - 0.4)).isEqualTo(inside);
        assertThat(after(limitC - 0.4 - JUST_C)).isEqualTo(below);
    }

    @Test
    void whoGoesBackAStageWhileItBoils_isBelievedAfter25Seconds() {
        stand(10, 104);
        assertThat(stand(25, 103.2)).isEqualTo(-1);
        assertThat(stand(1, 103.2)).isZero();
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
    }

    @Test
    void whoGoesUpAStage_needNotWaitForLong() {
        stand(10, 103);
        assertThat(stand(5, 104)).isEqualTo(3);
        assertThat(stages.stage()).isEqualTo(Stage.AT_GEL_POINT);
    }

    @Test
    void aChangeThatDoesNotLast_isNone() {
        stand(30, 102);
        for (int i = 0; i < 20; i++) {
            assertThat(stand(2, 103.1)).isEqualTo(-1);
            assertThat(stand(2, 102)).isEqualTo(-1);
        }
        assertThat(stages.stage()).isEqualTo(Stage.ROLLING_BOIL);
    }

    @Test
    void whoFallsFromTheWindowFasterThanThreeTenthsAMinute_isNotBackAStageYet() {
        stand(10, 103);
        assertThat(follow(100, at -> MadeSignals.moving(at, 102.5, -0.31))).isEqualTo(-1);
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
        follow(26, at -> MadeSignals.moving(at, 102.5, -0.3));
        assertThat(stages.stage()).isEqualTo(Stage.ROLLING_BOIL);
    }

    @Test
    void whoClimbsAStageWhileTheLastReadingsFall_isThere() {
        stand(30, 102);
        follow(10, at -> MadeSignals.moving(at, 103.1, -0.4));
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
    }

    @Test
    void whoFallsBelowTheBoil_isNotHeldInIt() {
        stand(30, 101);
        follow(10, at -> MadeSignals.moving(at, 99, -0.4));
        assertThat(stages.stage()).isEqualTo(Stage.COMING_TO_THE_BOIL);
    }

    @ParameterizedTest(name = "{0} °C, {1} °C a minute: {2}")
    @CsvSource({
        "95, 0.3, SIMMERING",
        "95, -0.3, SIMMERING",
        "95, 0.301, COMING_TO_THE_BOIL",
        "95, -0.301, COMING_TO_THE_BOIL",
        "88, 0, SIMMERING",
        "87.999, 0, WARMING",
        "91.999, 1, WARMING"
    })
    void itSimmers_whenItStandsAtMostTwelveDegreesBelowTheBoil(double c, double perMinC, Stage expected) {
        follow(100, at -> MadeSignals.moving(at, c, perMinC));
        assertThat(stages.stage()).isEqualTo(expected);
    }

    @Test
    void aSimmer_mustLastAMinute() {
        stand(10, 95);
        assertThat(follow(70, at -> MadeSignals.moving(at, 95, 0))).isEqualTo(60);
    }

    @ParameterizedTest(name = "{0} °C below its height, {1} °C a minute: {2}")
    @CsvSource({
        "2, -0.51, OFF_THE_HEAT",
        "1.999, -0.51, ROLLING_BOIL",
        "2, -0.5, ROLLING_BOIL",
        "8, -0.4, COMING_TO_THE_BOIL"
    })
    void itIsOffTheHeat_whenItHasFallenByTwoDegreesAndFallsOn(double fallenC, double perMinC, Stage expected) {
        stand(30, 102.5);
        follow(30, at -> MadeSignals.falling(at, 102.5 - fallenC, 102.5, perMinC));
        assertThat(stages.stage()).isEqualTo(expected);
    }

    @Test
    void offTheHeat_isSaidAfterTwentySeconds() {
        stand(30, 102.5);
        assertThat(follow(30, at -> MadeSignals.falling(at, 100.4, 102.5, -2))).isEqualTo(20);
    }

    @Test
    void aPanThatNeverBoiled_isNotOffTheHeat() {
        stand(30, 95);
        follow(60, at -> MadeSignals.falling(at, 90, 95, -3));
        assertThat(stages.stage()).isEqualTo(Stage.WARMING);
        assertThat(stages.boiled()).isFalse();
    }

    @ParameterizedTest(name = "{0} °C a minute: {1}")
    @CsvSource({"-0.151, OFF_THE_HEAT", "-0.15, OFF_THE_HEAT", "-0.149, ROLLING_BOIL", "1, ROLLING_BOIL"})
    void offTheHeat_lastsForAsLongAsItCools(double perMinC, Stage expected) {
        stand(30, 102.5);
        follow(30, at -> MadeSignals.falling(at, 100.5, 102.5, -2));
        follow(30, at -> MadeSignals.lines(at, 100.4, 102.5, perMinC, -1));
        assertThat(stages.stage()).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"95, SIMMERING", "88, SIMMERING", "87.9, OFF_THE_HEAT"})
    void aPanThatIsOffTheHeatAndStandsBelowTheBoil_simmers(double c, Stage expected) {
        stand(30, 102.5);
        follow(30, at -> MadeSignals.falling(at, 97, 102.5, -2));
        follow(70, at -> MadeSignals.lines(at, c, 102.5, -0.2, -0.2));
        assertThat(stages.stage()).isEqualTo(expected);
    }

    @Test
    void howLongItBoils_countsFromTheBoilAndThroughAllItsStages() {
        assertThat(stages.boilingForS(0)).isZero();
        stand(10, 95);
        assertThat(stages.boilingForS(t)).isZero();
        int boils = 10 + stand(21, 101);
        assertThat(stages.boilingForS(boils)).isZero();
        assertThat(stages.boilingForS(boils + 7)).isEqualTo(7);
        stand(100, 103.5);
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
        assertThat(stages.boilingForS(boils + 100)).isEqualTo(100);
        stand(10, 90);
        assertThat(stages.boilingForS(t)).isZero();
        double again = t + stand(30, 101);
        assertThat(stages.boilingForS(again + 5)).isEqualTo(5);
    }

    @ParameterizedTest
    @EnumSource(
            value = Stage.class,
            names = {"TEST_WINDOW", "AT_GEL_POINT", "PAST_GEL_POINT"})
    void theTestWindow_isReachedInItOrBeyond(Stage stage) {
        stand(30, 102);
        assertThat(stages.boiled()).isTrue();
        assertThat(stages.reachedWindow()).isFalse();
        stand(10, stage == Stage.TEST_WINDOW ? 103 : stage == Stage.AT_GEL_POINT ? 104 : 105);
        assertThat(stages.stage()).isEqualTo(stage);
        assertThat(stages.reachedWindow()).isTrue();
    }

    @Test
    void thatItBoiledAndReachedTheWindow_isNotForgottenWhenItGoesBack() {
        stand(10, 103);
        stand(30, 102);
        assertThat(stages.reachedWindow()).isTrue();
        stand(10, 90);
        assertThat(stages.boiled()).isTrue();
        assertThat(stages.reachedWindow()).isTrue();
    }

    @Test
    void anotherGelPoint_isJudgedAnew() {
        stand(10, 104);
        CookSettings later = new CookSettings(WaterBoil.measured(100, 0), 6, 1);
        assertThat(stages.aim(later)).isTrue();
        assertThat(stages.stage()).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(stages.reachedWindow()).isFalse();
        assertThat(stages.aim(later)).isFalse();
        stand(30, 104.9);
        assertThat(stages.stage()).isEqualTo(Stage.ROLLING_BOIL);
        stand(10, 105);
        assertThat(stages.stage()).isEqualTo(Stage.TEST_WINDOW);
    }

    @Test
    void anotherGelPoint_doesNotMakeAPanBoil() {
        stand(10, 90);
        assertThat(stages.aim(SETTINGS)).isFalse();
        assertThat(stages.stage()).isEqualTo(Stage.WARMING);
    }

    @Test
    void whoSaysThatItIsOver_isBelievedAtOnceAndMayTakeItBack() {
        stand(10, 104);
        assertThat(stages.end()).isTrue();
        assertThat(stages.stage()).isEqualTo(Stage.OFF_THE_HEAT);
        assertThat(stages.goOn()).isTrue();
        assertThat(stages.stage()).isEqualTo(Stage.AT_GEL_POINT);
        assertThat(stages.goOn()).isFalse();
    }

    @Test
    void whoSaysThatItIsOver_saysNothingNewOfAPanThatIsOffTheHeat() {
        stand(30, 102.5);
        follow(30, at -> MadeSignals.falling(at, 97, 102.5, -2));
        assertThat(stages.end()).isFalse();
        assertThat(stages.goOn()).isFalse();
        assertThat(stages.stage()).isEqualTo(Stage.OFF_THE_HEAT);
    }
}
