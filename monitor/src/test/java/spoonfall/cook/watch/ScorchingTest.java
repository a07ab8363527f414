package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.MadePan;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/**
 * A base that catches, on a pan drawn by hand that climbs 0.1 °C a minute up to 900 s. The limits are those of {@link Scorching},
 * judgements without a source.
 */
final class ScorchingTest {
    private static final double FAULT_S = 900;

    private final Scorching scorching = new Scorching(100);
    private Condition last = Condition.ABSENT;
    private String said = "";

    private static double since(double t) {
        return Math.max(0, t - FAULT_S);
    }

    /** After how many seconds of the fault the base is first said to catch; -1 if it is not within so many. */
    private int caught(int withinS, DoubleUnaryOperator faultC) {
        return caught(MadePan.climbing(1.5, faultC), withinS, false);
    }

    private int caught(MadePan pan, int withinS, boolean stands) {
        int[] caught = {-1};
        pan.watch(FAULT_S + withinS, now -> {
            last = scorching.judge(
                    pan.stages(), now, pan.forecaster(), stands && now.t() > FAULT_S - 100 && now.t() < FAULT_S);
            assertThat(last == Condition.PRESENT && now.t() <= FAULT_S).isFalse();
            if (last == Condition.PRESENT && caught[0] < 0) {
                caught[0] = (int) (now.t() - FAULT_S);
                said = scorching.text().title();
            }
        });
        return caught[0];
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @CsvSource({"0.7", "1", "3", "6"})
    void itIsSeen_withinAMinute(double perMinC) {
        assertThat(caught(60, t -> perMinC * since(t) / 60)).isBetween(20, 50);
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @CsvSource({"0.1", "0.2", "0.4"})
    void aPanWhoseHeatIsTurnedUp_doesNotCatch(double moreC) {
        assertThat(caught(300, t -> moreC * since(t) / 60)).isEqualTo(-1);
    }

    @Test
    void whatIsSaid_isItsClimbAndWhatTheWaterAllows() {
        caught(60, t -> 3 * since(t) / 60);
        assertThat(scorching.text().title())
                .isEqualTo("The base may be catching: it climbs {diff:3.1} a minute; "
                        + "the water that leaves allows {diff:0.1}.");
    }

    @Test
    void aSlowerClimb_isNotSeen_whereTheReadingsStayCalm() {
        assertThat(caught(120, ScorchingTest::slowly)).isEqualTo(-1);
    }

    @Test
    void aSlowerClimb_thatGrowsRestless_isSeen_andSaysSo() {
        assertThat(caught(120, t -> slowly(t) + (t > FAULT_S ? 1 : 0.2) * restless(t)))
                .isBetween(20, 120);
        assertThat(said).contains("a minute and jumps about more than before; the water");
    }

    @Test
    void aSlowerClimb_thatWasAlwaysRestless_isNot() {
        assertThat(caught(120, t -> slowly(t) + restless(t))).isEqualTo(-1);
    }

    private static double slowly(double t) {
        return 0.45 * since(t) / 60;
    }

    private static double restless(double t) {
        return 0.1 * Math.sin(0.37 * t) + 0.07 * Math.sin(0.9 * t);
    }

    @Test
    void aReadingThatJumps_isNoBase() {
        MadePan pan = MadePan.climbing(1.5, t -> t > FAULT_S ? 1.5 : 0);
        int[] present = {0, 0};
        pan.watch(FAULT_S + 100, now -> {
            boolean is = scorching.judge(pan.stages(), now, pan.forecaster(), false) == Condition.PRESENT;
            present[0] = is ? present[0] + 1 : 0;
            present[1] = Math.max(present[1], present[0]);
        });
        // the level takes eight seconds to jump, and may lie half way for a moment: the alarm waits for ten
        assertThat((double) present[1])
                .isLessThan(AlarmName.SCORCH_RISK.delays().onS());
    }

    @Test
    void aDipThatIsStirredIn_andComesBackToItsHeight_isNoBase() {
        assertThat(caught(100, t -> t > FAULT_S && t < FAULT_S + 30 ? -1 + since(t) / 30 : 0))
                .isEqualTo(-1);
    }

    @Test
    void afterAStall_thePanClimbsAsFast() {
        MadePan pan = MadePan.climbing(1.5, t -> 3 * since(t) / 60);
        assertThat(caught(pan, 60, true)).isEqualTo(-1);
        assertThat(last).isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void inItsFirstThreeMinutes_aBoilIsNotJudged() {
        MadePan pan = MadePan.climbing(1.5, t -> 3 * Math.max(0, t - 120) / 60);
        pan.watch(195, now -> last = scorching.judge(pan.stages(), now, pan.forecaster(), false));
        assertThat(last).isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void aPanThatDoesNotBoil_doesNotCatch_andWhatWasKnownOfItIsForgotten() {
        MadePan pan = MadePan.climbing(1.5, t -> 3 * since(t) / 60);
        caught(pan, 60, false);
        Stages warming = new Stages(MadePan.SETTINGS);
        assertThat(scorching.judge(warming, pan.now(), pan.forecaster(), false)).isEqualTo(Condition.ABSENT);
        assertThat(scorching.judge(pan.stages(), pan.now(), pan.forecaster(), false))
                .isEqualTo(Condition.UNDECIDED);
    }

    @Test
    void whenItNoLongerClimbs_itIsOver() {
        DoubleUnaryOperator catches = t -> 3 * Math.min(60, since(t)) / 60;
        assertThat(caught(55, catches)).isPositive();
        ScorchingTest later = new ScorchingTest();
        assertThat(later.caught(300, catches)).isPositive();
        assertThat(later.last).isEqualTo(Condition.ABSENT);
    }

    @Test
    void aCoarseThermometer_isSeenToClimbOverTwoMinutes() {
        MadePan fine = MadePan.climbing(1.5, t -> 3 * since(t) / 60);
        int[] caught = {-1};
        fine.watch(FAULT_S + 150, now -> {
            Signals coarse = new Signals(
                    now.t(),
                    now.levelC(),
                    now.trendC(),
                    now.quick(),
                    now.steady(),
                    now.peakC(),
                    now.earlierPeakC(),
                    0.5);
            Condition judged = scorching.judge(fine.stages(), coarse, fine.forecaster(), false);
            if (judged == Condition.PRESENT && caught[0] < 0) {
                caught[0] = (int) (now.t() - FAULT_S);
            }
        });
        assertThat(caught[0]).isBetween(50, 100);
    }
}
