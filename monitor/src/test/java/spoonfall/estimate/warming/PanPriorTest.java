package spoonfall.estimate.warming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoonfall.estimate.Follower;
import spoonfall.estimate.SteadyPan;

/** What a plan does to the forecasts of twenty usual pans (seeds 1 to 20) that were not seen to warm. */
final class PanPriorTest {
    private static final long SEEDS = 20;
    private static final double SOON_S = 60;
    private static final double HALFWAY_S = 600;

    /** 2.1 kg at 40 % on 1.35 kW: 26.6 g of water a minute for each kW (IAPWS latent heat). */
    private static final PanPrior RIGHT = new PanPrior(2.1, 0.84, 1.35 * 26.6e-3, 0.1);

    /** Measured: off by 4 %, and by 18 % without. */
    @Test
    void plan_sharpensTheFirstForecast() {
        double with = middle(RIGHT, SOON_S);
        double without = middle(null, SOON_S);
        System.out.printf(
                "a minute after the boil, seeds 1 to 20: off by %.3f with a plan, %.3f without%n", with, without);
        assertThat(with).isLessThan(0.4 * without);
    }

    static Stream<PanPrior> wrongByAFifth() {
        return Stream.of(0.8, 1.2)
                .flatMap(by -> Stream.of(
                        new PanPrior(2.1 * by, 0.84, RIGHT.waterKgPerMin(), 0.1),
                        new PanPrior(2.1, 0.84 * by, RIGHT.waterKgPerMin(), 0.1),
                        new PanPrior(2.1, 0.84, RIGHT.waterKgPerMin() * by, 0.1),
                        new PanPrior(2.1 * by, 0.84 * by, RIGHT.waterKgPerMin(), 0.1)));
    }

    /** Measured: off by 5 to 13 % half way up, the worst where the plan has a fifth less sugar; by 10 % without. */
    @ParameterizedTest
    @MethodSource("wrongByAFifth")
    void plan_hardlyTellsHalfWayUp_whenItIsWrongByAFifth(PanPrior wrong) {
        double with = middle(wrong, HALFWAY_S);
        double without = middle(null, HALFWAY_S);
        System.out.printf("half way, seeds 1 to 20: off by %.3f with %s, %.3f without%n", with, wrong, without);
        assertThat(with).isLessThan(without + 0.035);
    }

    @Test
    void plan_ofAnotherPan_isLeftAside() {
        PanPrior thin = new PanPrior(4, 0.4, RIGHT.waterKgPerMin(), 0.1);
        assertThat(forecast(thin, 3, SOON_S)).isEqualTo(forecast(null, 3, SOON_S));
    }

    @Test
    void plan_thatIsNoPan_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PanPrior(2, 2, 0.03, 0.1))
                .withMessageContaining("less than all 2.0 kg");
        assertThatIllegalArgumentException().isThrownBy(() -> new PanPrior(Double.NaN, 1, 0.03, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PanPrior(2, 1, 0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PanPrior(2, 1, 0.03, 0));
    }

    private static double middle(@Nullable PanPrior plan, double afterS) {
        double[] errors = LongStream.rangeClosed(1, SEEDS)
                .mapToDouble(seed -> Math.abs(forecast(plan, seed, afterS)))
                .sorted()
                .toArray();
        return Arrays.stream(errors).skip(SEEDS / 2).findFirst().orElseThrow();
    }

    /** By which part of the true time the forecast is off. */
    private static double forecast(@Nullable PanPrior plan, long seed, double afterS) {
        Follower follower = new Follower(SteadyPan.usual(seed), 1);
        if (plan != null) {
            follower.estimator.expect(plan);
        }
        return follower.forS(afterS).error();
    }
}
