package spoonfall.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PlateauTest {
    private static final Reference WATER = Reference.boilingWater(95.8, 0.4);

    private static Plateau.Verdict after(Reference reference, double seconds, DoubleUnaryOperator shownC) {
        Plateau plateau = new Plateau(reference);
        Plateau.Verdict verdict = plateau.accept(0, shownC.applyAsDouble(0));
        for (double t = 1; t <= seconds && verdict.point().isEmpty(); t++) {
            verdict = plateau.accept(t, shownC.applyAsDouble(t));
        }
        return verdict;
    }

    @Test
    void aMinuteThatStandsStill_isAPlateau() {
        Point point = after(WATER, 70, t -> 95.2 + 0.05 * Math.sin(t)).point().orElseThrow();
        assertThat(point.shownC()).isEqualTo(95.2, Offset.offset(0.02));
        assertThat(point.correctionC()).isEqualTo(0.6, Offset.offset(0.02));
    }

    @Test
    void whyNotYet_isSaid() {
        assertThat(after(WATER, 30, t -> 95.2).why()).contains("a minute of it is needed");
        assertThat(after(WATER, 90, t -> 93 + t / 60).why()).isEqualTo("Still rising.");
        assertThat(after(WATER, 90, t -> 97 - t / 120).why()).isEqualTo("Still falling.");
        assertThat(after(WATER, 90, t -> 95.5 + (t % 2 == 0 ? 1 : -1)).why()).contains("Too noisy");
        assertThat(after(WATER, 90, t -> 60).why()).contains("Not boiling yet");
        assertThat(after(WATER, 90, t -> 204).why()).contains("is it plain water, and the unit right?");
        assertThat(after(Reference.ice(), 90, t -> 21).why()).contains("Still too warm for ice");
    }

    @Test
    void theStatedInterval_holdsTheTruthInNineteenOfTwenty() {
        // Simulated calibrations: a thermometer with lag-correlated bubble noise and 0.1 °C steps, in water that boils
        // anywhere within the elevation's limits.
        for (double limitC : new double[] {0.4, 0.1, 0.02}) {
            SplittableRandom random = new SplittableRandom(20261125);
            int held = 0;
            int tried = 1000;
            for (int i = 0; i < tried; i++) {
                double errorC = random.nextDouble(-2, 2);
                double trueBoilC = 95.8 + random.nextDouble(-limitC, limitC);
                double[] noise = {0};
                Point point = after(Reference.boilingWater(95.8, limitC), 600, t -> {
                            double keeps = Math.exp(-1 / 2.0);
                            noise[0] = noise[0] * keeps + 0.1 * Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
                            return Math.round((trueBoilC + errorC + noise[0]) * 10) / 10.0;
                        })
                        .point()
                        .orElseThrow();
                held += Math.abs(point.correctionC() + errorC) <= point.half95C() ? 1 : 0;
            }
            assertThat(100.0 * held / tried)
                    .as("limit %.2f °C, seed 20261125", limitC)
                    .isBetween(93.0, 97.0);
        }
    }

    @ParameterizedTest
    @CsvSource({"0,1,1.95996", "0.4,0,0.38", "1,1,2.25414"})
    void coverage_isThatOfTheSum(double limit, double sigma, double half) {
        // Normal alone: 1.960 (any table). Rectangular alone: 0.95 of the limit. Both: by a numerical integration with
        // the exact error function, made beforehand.
        assertThat(Coverage.half95(limit, sigma)).isEqualTo(half, Offset.offset(1e-3));
    }

    @Test
    void onePoint_isAnOffsetAndTwoAreALine() {
        Point boil = new Point(Reference.boilingWater(95.8, 0.4), 95.2, 0.02);
        Point ice = new Point(Reference.ice(), 0.3, 0.02);
        assertThat(new Correction(List.of(boil)).trueC(20)).isEqualTo(20.6, Offset.offset(1e-9));
        Correction line = new Correction(List.of(boil, ice));
        assertThat(line.trueC(95.2)).isEqualTo(95.8, Offset.offset(1e-9));
        assertThat(line.trueC(0.3)).isEqualTo(0, Offset.offset(1e-9));
        assertThat(line.uncertaintyC(0.3)).isLessThan(line.uncertaintyC(95.2));
    }

    @Test
    void nonsense_isRefusedWithTheLikelyReason() {
        Point far = new Point(Reference.boilingWater(95.8, 0.4), 60, 0.02);
        assertThatThrownBy(() -> new Correction(List.of(far))).hasMessageContaining("check its unit and its sensor");
        Point boil = new Point(Reference.boilingWater(95.8, 0.4), 95.2, 0.02);
        assertThatThrownBy(() -> new Correction(List.of(boil, boil))).hasMessageContaining("50 °C apart");
        assertThatThrownBy(() -> new Correction(List.of())).hasMessageContaining("one point or two");
    }
}
