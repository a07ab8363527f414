package spoonfall.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The cumulative logit (proportional odds) model of the set on the final rise: {@code logit P(set ≤ k) = threshold_k -
 * slope (rise - centre - shift_fruit)}. All batches share slope and thresholds; a fruit shifts the rise that is right.
 * "Right" lies symmetrically about the centre, so centre plus shift is the rise at which it is likeliest.
 *
 * <p>A point of it is an array of standard normal numbers before any batch: centre, log slope, log half width of
 * "right", log width of "soft", log width of "firm", then a shift for each fruit.
 */
final class SetModel {
    static final int SHARED = 5;

    private final Prior prior;
    private final Map<String, Integer> fruits = new LinkedHashMap<>();
    private final double[] aboveC;
    private final int[] set;
    private final int[] fruit;

    /** The model of some batches, which may be none. */
    SetModel(Prior prior, List<Batch> batches) {
        this.prior = prior;
        int rows = batches.size();
        aboveC = new double[rows];
        set = new int[rows];
        fruit = new int[rows];
        for (int i = 0; i < rows; i++) {
            Batch batch = batches.get(i);
            aboveC[i] = batch.finalRiseC() - prior.centreC();
            set[i] = Bands.ORDER.indexOf(batch.set());
            Integer known = fruits.putIfAbsent(Batch.key(batch.fruit()), fruits.size());
            fruit[i] = known == null ? fruits.size() - 1 : known;
        }
    }

    /** How many numbers a point has. */
    int size() {
        return SHARED + fruits.size();
    }

    /** The fruits of the batches, in the order of their shifts. */
    List<String> fruits() {
        return new ArrayList<>(fruits.keySet());
    }

    /** The taste at a point. */
    Taste taste(double[] at) {
        double[] shifts = new double[fruits.size()];
        for (int i = 0; i < shifts.length; i++) {
            shifts[i] = prior.fruitSdC() * at[SHARED + i];
        }
        return new Taste(
                prior.centreC() + prior.centreSdC() * at[0],
                prior.slope() * Math.exp(prior.slopeLogSd() * at[1]),
                prior.halfRight() * Math.exp(prior.widthLogSd() * at[2]),
                prior.beyond() * Math.exp(prior.widthLogSd() * at[3]),
                prior.beyond() * Math.exp(prior.widthLogSd() * at[4]),
                shifts);
    }

    /** The logarithm of the posterior density at a point, but for a constant. */
    double logDensity(double[] at) {
        return evaluate(at, null);
    }

    /** The same; what it grows by in each direction goes into {@code gradient}. */
    double logDensity(double[] at, double[] gradient) {
        return evaluate(at, gradient);
    }

    private double evaluate(double[] at, double @Nullable [] gradient) {
        Taste taste = taste(at);
        Bands bands = new Bands(taste);
        double sum = 0;
        double[] byThreshold = new double[Bands.COUNT];
        double[] byFruit = new double[fruits.size()];
        double bySlope = 0;
        for (int i = 0; i < set.length; i++) {
            double above = aboveC[i] - (taste.centreC() - prior.centreC()) - taste.shiftsC()[fruit[i]];
            double place = taste.slope() * above;
            sum += bands.logChance(set[i], place);
            if (gradient != null) {
                double by = bands.addSlopes(set[i], place, byThreshold);
                byFruit[fruit[i]] += by;
                bySlope += by * place;
            }
        }
        if (gradient != null) {
            fill(gradient, at, taste, byThreshold, byFruit, bySlope);
        }
        double squares = 0;
        for (double one : at) {
            squares += one * one;
        }
        return sum - squares / 2;
    }

    private void fill(
            double[] gradient, double[] at, Taste taste, double[] byThreshold, double[] byFruit, double bySlope) {
        Arrays.fill(gradient, 0);
        double width = prior.widthLogSd();
        double inner = byThreshold[3] + byThreshold[4] - byThreshold[1] - byThreshold[2];
        gradient[1] = prior.slopeLogSd() * bySlope;
        gradient[2] = width * taste.halfRight() * inner;
        gradient[3] = -width * taste.soft() * byThreshold[1];
        gradient[4] = width * taste.firm() * byThreshold[4];
        for (int f = 0; f < byFruit.length; f++) {
            gradient[0] -= prior.centreSdC() * taste.slope() * byFruit[f];
            gradient[SHARED + f] = -prior.fruitSdC() * taste.slope() * byFruit[f];
        }
        for (int i = 0; i < gradient.length; i++) {
            gradient[i] -= at[i];
        }
    }

    static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }
}
