package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The first forecasts of a pan that was seen to warm, before its thermometer has arrived at the boil. */
final class BeginningTest {
    private static final double WARMS_PER_MIN_C = 5;
    private static final double SOON_S = 12;
    private static final double NOT_ARRIVED_C = 0.5;

    /** A slot has just ended, so that both have the same points from then on. */
    private static final double SETTLED_S = 16;

    @Test
    void forecast_isGivenAtOnce_whenThePanWasSeenToWarm() {
        Follower warmed = warmed();
        Follower unknown = new Follower(SteadyPan.usual(1), 1);
        assertThat(warmed.forS(SOON_S).arrival()).isPresent();
        assertThat(unknown.forS(SOON_S).arrival()).as("nothing tells its heat").isEmpty();
    }

    /** A thermometer that still creeps up to the boil seems to climb: none of that may be left once it has arrived. */
    @Test
    void forecast_beginsAnew_whenTheThermometerHasArrived() {
        PanEstimator early = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, false);
        PanEstimator late = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, false);
        Follower pan = new Follower(SteadyPan.usual(2), 1);
        warm(early);
        warm(late);
        for (int t = 1; t <= 40; t++) {
            pan.forS(1);
            double shownC = pan.pan.shownC(t < SOON_S ? NOT_ARRIVED_C : 0);
            early.accept(t, shownC);
            late.accept(t, shownC);
            early.endSecond(t, true, t >= SETTLED_S, false, 0.01);
            late.endSecond(t, t >= SETTLED_S, t >= SETTLED_S, false, 0.01);
        }
        double lateS = late.arrival(40, Follower.GEL_RISE_C).orElseThrow().s();
        assertThat(early.arrival(40, Follower.GEL_RISE_C).orElseThrow().s()).isCloseTo(lateS, within(0.03 * lateS));
    }

    @Test
    void readingByHand_isNotBelieved_beforeItHasSettled() {
        PanEstimator byHand = new PanEstimator(SteadyPan.PRESSURE_PA, 0.1, true);
        warm(byHand);
        byHand.accept(1, 1.2);
        byHand.endSecond(7, true, false, false, 0.5);
        assertThat(byHand.knows()).isFalse();
        byHand.accept(61, 1.3);
        byHand.endSecond(67, true, true, false, 0.5);
        assertThat(byHand.knows()).isTrue();
    }

    private static Follower warmed() {
        Follower follower = new Follower(SteadyPan.usual(1), 1);
        warm(follower.estimator);
        return follower;
    }

    private static void warm(PanEstimator estimator) {
        for (int s = 0; s < 200; s++) {
            estimator.warms(s - 240, -22 + s * WARMS_PER_MIN_C / 60, WARMS_PER_MIN_C);
        }
    }
}
