package spoonfall.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import spoonfall.book.Firmness;

/** The model beside a published fit, and its slopes beside differences. */
final class SetModelTest {
    /**
     * Bitterness of wine, 72 judgements: Randall (1989), "The analysis of sensory data by generalised linear model", Biometrical
     * Journal 7, 781–793, as table 1 of the tutorial of the R package ordinal (Christensen) has it. Rows: cold and dry,
     * cold with contact, warm and dry, warm with contact; two bottles each, nine judges.
     */
    private static final int[][] WINE = {
        {2, 1, 2, 3, 2, 3, 1, 2, 1, 3, 2, 3, 2, 3, 2, 1, 2, 2},
        {3, 1, 3, 3, 4, 3, 2, 2, 3, 4, 3, 2, 2, 3, 2, 2, 3, 2},
        {4, 2, 5, 3, 3, 2, 2, 3, 3, 4, 3, 5, 2, 3, 4, 3, 3, 2},
        {5, 5, 4, 5, 3, 5, 2, 3, 4, 5, 4, 4, 3, 3, 4, 3, 4, 4},
    };

    /** So wide that it says nothing. */
    private static final Prior FLAT = new Prior(10, 1000, 1000, 1, 100, 1, 1, 100);

    /** Warmth stands for a rise of 1 °C, contact with the skins for another fruit. */
    private static List<Batch> wine() {
        List<Batch> batches = new ArrayList<>();
        for (int row = 0; row < 4; row++) {
            for (int rating : WINE[row]) {
                String fruit = row % 2 == 0 ? "dry" : "with contact";
                batches.add(new Batch(batches.size(), fruit, 10 + (row / 2), Bands.ORDER.get(rating - 1)));
            }
        }
        return batches;
    }

    @Test
    void wine_isFittedAsByClmOfTheRPackageOrdinal() {
        SetModel model = new SetModel(FLAT, wine());
        Peak peak = Peak.of(model);
        Taste taste = model.taste(peak.at());
        double dryC = taste.centreC() + taste.shiftsC()[0] - 10;
        double contactC = taste.centreC() + taste.shiftsC()[1] - 10;
        double middle = taste.slope() * dryC;

        // clm(rating ~ temp + contact, data = wine): its printed summary, to four decimals.
        assertThat(taste.slope()).isCloseTo(2.5031, within(6e-5));
        assertThat(taste.slope() * (dryC - contactC)).isCloseTo(1.5278, within(6e-5));
        assertThat(middle - taste.halfRight() - taste.soft()).isCloseTo(-1.3444, within(6e-5));
        assertThat(middle - taste.halfRight()).isCloseTo(1.2508, within(6e-5));
        assertThat(middle + taste.halfRight()).isCloseTo(3.4669, within(6e-5));
        assertThat(middle + taste.halfRight() + taste.firm()).isCloseTo(5.0064, within(6e-5));
        assertThat(model.logDensity(peak.at())).isCloseTo(-86.49, within(0.006));
    }

    @Test
    void wine_hasTheStandardErrorsOfClm() {
        SetModel model = new SetModel(FLAT, wine());
        Peak peak = Peak.of(model);
        assertThat(error(model, peak, Taste::slope)).isCloseTo(0.5287, within(5e-4));
        assertThat(error(model, peak, taste -> taste.slope() * (taste.shiftsC()[1] - taste.shiftsC()[0])))
                .isCloseTo(0.4766, within(5e-4));
        assertThat(error(
                        model,
                        peak,
                        taste -> taste.slope() * (taste.centreC() + taste.shiftsC()[0] - 10) - taste.halfRight()))
                .isCloseTo(0.4379, within(5e-4));
    }

    private interface Figure {
        double of(Taste taste);
    }

    /** By the delta method: the slope of a figure through the inverse of the second derivatives. */
    private static double error(SetModel model, Peak peak, Figure figure) {
        int n = model.size();
        double[] slopes = new double[n];
        for (int i = 0; i < n; i++) {
            double[] there = peak.at().clone();
            there[i] += 1e-6;
            double above = figure.of(model.taste(there));
            there[i] -= 2e-6;
            slopes[i] = (above - figure.of(model.taste(there))) / 2e-6;
        }
        double[] solved = peak.precision().solve(slopes);
        double square = 0;
        for (int i = 0; i < n; i++) {
            square += slopes[i] * solved[i];
        }
        return Math.sqrt(square);
    }

    @Test
    void gradient_isWhatDifferencesGive() {
        long seed = 7;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 50; round++) {
            List<Batch> batches = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Firmness set = Bands.ORDER.get(random.nextInt(5));
                batches.add(new Batch(i, "fruit " + random.nextInt(3), 3 + 3 * random.nextDouble(), set));
            }
            SetModel model = new SetModel(Prior.usual(), batches);
            double[] at = new double[model.size()];
            for (int i = 0; i < at.length; i++) {
                at[i] = random.nextGaussian();
            }
            double[] gradient = new double[at.length];
            model.logDensity(at, gradient);
            for (int i = 0; i < at.length; i++) {
                double[] there = at.clone();
                there[i] = at[i] + 1e-5;
                double above = model.logDensity(there);
                there[i] = at[i] - 1e-5;
                double slope = (above - model.logDensity(there)) / 2e-5;
                assertThat(gradient[i])
                        .as("seed %d, round %d, direction %d", seed, round, i)
                        .isCloseTo(slope, within(1e-6 * Math.max(1, Math.abs(slope))));
            }
        }
    }

    @Test
    void chances_loseNothingFarOut() {
        List<Batch> batches =
                List.of(new Batch(1, "orange", 19.9, Firmness.RUNNY), new Batch(2, "orange", 0.1, Firmness.STIFF));
        SetModel model = new SetModel(Prior.usual(), batches);
        double[] at = new double[model.size()];
        at[1] = 5; // a slope of 22 to the degree
        assertThat(model.logDensity(at)).isBetween(-1e4, -100.0);
        assertThat(Peak.of(model).at()).doesNotContain(Double.NaN);
    }
}
