package spoonfall.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/** What the batches so far teach of this cook's taste. */
public final class Learning {
    /** As many batches are looked at, the latest. */
    public static final int MOST_BATCHES = 2000;

    private static final int DRAWS = 4000;
    private static final double STEP_C = 0.1;
    private static final double TAIL = 0.05;

    private final List<Batch> batches;
    private final List<String> fruits;
    private final List<Taste> draws;
    private final double fruitSdC;

    private Learning(Prior prior, List<Batch> batches, int draws) {
        this.batches = batches;
        SetModel model = new SetModel(prior, batches);
        fruits = model.fruits();
        fruitSdC = prior.fruitSdC();
        this.draws = Draws.of(model, draws);
    }

    /** Learns from batches in any order. One that was judged twice counts once, by the later word. */
    public static Learning from(List<Batch> batches) {
        return from(batches, DRAWS);
    }

    static Learning from(List<Batch> batches, int draws) {
        return new Learning(Prior.usual(), judgedOnce(batches), draws);
    }

    private static List<Batch> judgedOnce(List<Batch> batches) {
        Map<Long, Batch> latest = new LinkedHashMap<>();
        batches.stream()
                .sorted(Comparator.comparingLong(Batch::id).thenComparing(Batch::after))
                .forEach(batch -> latest.put(batch.id(), batch));
        List<Batch> once = new ArrayList<>(latest.values());
        return List.copyOf(once.subList(Math.max(0, once.size() - MOST_BATCHES), once.size()));
    }

    /** Whether that is what these batches teach, in any order. */
    public boolean isFrom(List<Batch> others) {
        return batches.equals(judgedOnce(others));
    }

    /** The batches that it rests on, by their numbers. */
    public List<Batch> batches() {
        return batches;
    }

    /** The fruits of them as they were written last, in the order of their first batch. */
    public List<String> fruits() {
        return fruits.stream().map(this::shown).toList();
    }

    private String shown(String fruit) {
        return batches.stream()
                .filter(batch -> batch.isOf(fruit))
                .map(Batch::fruit)
                .reduce((earlier, later) -> later)
                .orElseGet(() -> Batch.tidied(fruit));
    }

    /** How likely each set is for a fruit, known or not, that is boiled to {@code riseC} above the water boil. */
    public Chances chances(String fruit, double riseC) {
        double[] best = best(fruit);
        double[] sums = new double[Bands.COUNT];
        for (int i = 0; i < best.length; i++) {
            draws.get(i).addChances(riseC - best[i], sums);
        }
        int n = best.length;
        return new Chances(sums[0] / n, sums[1] / n, sums[2] / n, sums[3] / n, sums[4] / n);
    }

    /** The rise to aim at with the next batch of a fruit, known or not. */
    public Proposal propose(String fruit) {
        double[] best = best(fruit);
        double target = SafeBand.LEAST_RISE_C;
        double most = -1;
        for (int step = 0; ; step++) {
            double riseC = Math.round((SafeBand.LEAST_RISE_C + step * STEP_C) * 10) / 10.0;
            if (riseC > SafeBand.MOST_RISE_C) {
                break;
            }
            double right = right(best, riseC);
            if (right > most) {
                most = right;
                target = riseC;
            }
        }
        Arrays.sort(best);
        double middleC = quantile(best, 0.5);
        List<Batch> same = batches.stream().filter(batch -> batch.isOf(fruit)).toList();
        return new Proposal(
                shown(fruit),
                target,
                quantile(best, TAIL),
                quantile(best, 1 - TAIL),
                chances(fruit, target),
                same.size(),
                batches.size() - same.size(),
                same.isEmpty() ? Optional.empty() : Optional.of(same.get(same.size() - 1)),
                edge(target, middleC));
    }

    private static Proposal.Edge edge(double targetC, double middleC) {
        if (targetC >= SafeBand.MOST_RISE_C && middleC > SafeBand.MOST_RISE_C) {
            return Proposal.Edge.HIGHEST;
        }
        return targetC <= SafeBand.LEAST_RISE_C && middleC < SafeBand.LEAST_RISE_C
                ? Proposal.Edge.LOWEST
                : Proposal.Edge.NONE;
    }

    private double right(double[] best, double riseC) {
        double sum = 0;
        for (int i = 0; i < best.length; i++) {
            sum += draws.get(i).right(riseC - best[i]);
        }
        return sum / best.length;
    }

    /** The rise that is right for a fruit, by each belief. A fruit that is new may differ as fruits do. */
    private double[] best(String fruit) {
        int known = fruits.indexOf(Batch.key(fruit));
        double[] best = new double[draws.size()];
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < best.length; i++) {
            Taste taste = draws.get(i);
            best[i] = taste.centreC() + (known < 0 ? fruitSdC * random.nextGaussian() : taste.shiftsC()[known]);
        }
        return best;
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
