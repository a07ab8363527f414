package spoonfall.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Simulated cooks with a taste that nobody is told: whether the interval of the target holds what is truly best, and how often
 * the proposed rise is truly right. {@code -Dspoonfall.tastes=N} makes it N cooks, each of which follows what is proposed to it
 * for 30 batches (docs/learning.md has the figures for 1,000).
 */
final class HiddenTasteTest {
    private static final long SEED = 20_000;
    private static final double STOPS_WITHIN_C = 0.25;

    /** A taste that nobody is told. It is not drawn from the prior: any rise from 3.5 to 5.5 °C may be best. */
    private record Hidden(double bestC, Taste taste) {
        static Hidden drawn(SplittableRandom random) {
            double slope = 2 + 4 * random.nextDouble();
            return new Hidden(
                    3.5 + 2 * random.nextDouble(),
                    new Taste(
                            0,
                            slope,
                            slope * (0.4 + 0.4 * random.nextDouble()),
                            slope * (0.6 + 0.8 * random.nextDouble()),
                            slope * (0.6 + 0.8 * random.nextDouble()),
                            new double[0]));
        }

        double right(double riseC) {
            return taste.right(riseC - bestC);
        }

        /** A batch that was to be boiled to {@code targetC}, as somebody at the pan gets it. */
        Batch cooked(long id, double targetC, SplittableRandom random) {
            double riseC = Math.max(0.5, targetC + STOPS_WITHIN_C * random.nextGaussian());
            double[] chances = new double[Bands.COUNT];
            taste.addChances(riseC - bestC, chances);
            double left = random.nextDouble();
            int set = 0;
            while (set < Bands.COUNT - 1 && left >= chances[set]) {
                left -= chances[set];
                set++;
            }
            return new Batch(id, "orange", riseC, Bands.ORDER.get(set));
        }
    }

    @Test
    void theInterval_holdsWhatIsTrulyBest_inNineCooksOfTen_andProposalsBeatTheRule() {
        int cooks = 1000;
        int batches = 10;
        int holds = 0;
        double rightProposed = 0;
        double rightByRule = 0;
        for (int cook = 0; cook < cooks; cook++) {
            SplittableRandom random = new SplittableRandom(SEED + cook);
            Hidden hidden = Hidden.drawn(random);
            List<Batch> told = new ArrayList<>();
            for (int i = 0; i < batches; i++) {
                told.add(hidden.cooked(i, 4.44 + 0.4 * random.nextGaussian(), random));
            }
            Proposal proposal = Learning.from(told, 500).propose("orange");
            holds += proposal.bestFromC() <= hidden.bestC() && hidden.bestC() <= proposal.bestToC() ? 1 : 0;
            rightProposed += hidden.right(proposal.riseC()) / cooks;
            rightByRule += hidden.right(4.44) / cooks;
        }
        double coverage = holds / (double) cooks;
        System.out.printf(
                "%d hidden tastes from seed %d, %d batches each: the 90 %% interval holds the best rise in %.1f %%; right by the"
                        + " proposal %.1f %%, by 8 °F %.1f %%%n",
                cooks, SEED, batches, 100 * coverage, 100 * rightProposed, 100 * rightByRule);
        assertThat(coverage).as("seeds from %d", SEED).isBetween(0.85, 0.97);
        assertThat(rightProposed).isGreaterThan(rightByRule + 0.1);
    }

    @Test
    void cooksWhoFollowTheProposals_areRightMoreOften_withEveryBatch() {
        int cooks = Integer.getInteger("spoonfall.tastes", 12);
        int[] after = {0, 3, 10, 30};
        double[] right = new double[after.length];
        int[] holds = new int[after.length];
        double[] widthC = new double[after.length];
        double best = 0;
        for (int cook = 0; cook < cooks; cook++) {
            SplittableRandom random = new SplittableRandom(SEED * 2 + cook);
            Hidden hidden = Hidden.drawn(random);
            best += hidden.right(hidden.bestC()) / cooks;
            List<Batch> told = new ArrayList<>();
            for (int i = 0; i < after.length; i++) {
                while (told.size() < after[i]) {
                    double targetC = Learning.from(told, 200).propose("orange").riseC();
                    told.add(hidden.cooked(told.size(), targetC, random));
                }
                Proposal proposal = Learning.from(told, 1000).propose("orange");
                right[i] += hidden.right(proposal.riseC()) / cooks;
                widthC[i] += (proposal.bestToC() - proposal.bestFromC()) / cooks;
                holds[i] += proposal.bestFromC() <= hidden.bestC() && hidden.bestC() <= proposal.bestToC() ? 1 : 0;
            }
        }
        System.out.printf("%d cooks from seed %d who follow; at best %.1f %%%n", cooks, SEED * 2, 100 * best);
        for (int i = 0; i < after.length; i++) {
            System.out.printf(
                    "after %2d batches: right %.1f %%, interval holds the best in %.1f %%, %.2f °C wide%n",
                    after[i], 100 * right[i], 100.0 * holds[i] / cooks, widthC[i]);
        }
        assertThat(right[3])
                .as("seeds from %d", SEED * 2)
                .isGreaterThan(right[0] + 0.05)
                .isGreaterThan(best - 0.06);
        assertThat(widthC[3]).isLessThan(widthC[1]);
    }
}
