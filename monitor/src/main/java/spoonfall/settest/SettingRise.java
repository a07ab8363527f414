package spoonfall.settest;

import java.util.Arrays;

/**
 * What is believed of the rise above boiling water at which a preserve sets: a probability for each rise of a fine grid,
 * so that an answer changes it in closed form. Immutable.
 *
 * <p>Before any test it is normal about the wanted rise. An answer is ordinal: who tests perceives how far the pan is below
 * its set, with an error, and says which of the steps that falls into. All its numbers are common practice, no source.
 */
final class SettingRise {
    /** Doubt of the wanted rise, one standard deviation in °C: recipes, fruit and thermometers differ. */
    private static final double PRIOR_C = 0.6;

    /** From so far below its set in °C a preserve no longer looks nearly set. */
    private static final double NEAR_C = 0.45;

    /** The error of who looks, one standard deviation in °C. */
    private static final double EYE_C = 0.2;

    /** The share of answers that tell nothing: a wrong tap, a warm plate. */
    private static final double SLIP = 0.02;

    private static final double REACH_C = 3;
    private static final double STEP_C = 0.01;
    private static final int SIZE = 2 * (int) Math.round(REACH_C / STEP_C) + 1;

    private final double firstC;
    private final double[] weights;

    private SettingRise(double firstC, double[] weights) {
        this.firstC = firstC;
        double sum = Arrays.stream(weights).sum();
        this.weights = Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    /** What is believed before any test of a preserve that should set {@code wantedC} above boiling water. */
    static SettingRise about(double wantedC) {
        double[] weights = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            double off = (i * STEP_C - REACH_C) / PRIOR_C;
            weights[i] = Math.exp(-off * off / 2);
        }
        return new SettingRise(wantedC - REACH_C, weights);
    }

    /** What is believed after a test at {@code riseC} above boiling water. */
    SettingRise after(double riseC, TestStep step) {
        double[] next = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            next[i] = weights[i] * likelihood(firstC + i * STEP_C - riseC, step);
        }
        return new SettingRise(firstC, next);
    }

    /** How likely that answer is {@code belowC} below the set. */
    private static double likelihood(double belowC, TestStep step) {
        double set = below(-belowC);
        double notFar = below(NEAR_C - belowC);
        return switch (step) {
            case SET -> SLIP / 3 + (1 - SLIP) * set;
            case NEAR -> SLIP / 3 + (1 - SLIP) * (notFar - set);
            case FAR -> SLIP / 3 + (1 - SLIP) * (1 - notFar);
            case NOT_YET -> 2 * SLIP / 3 + (1 - SLIP) * (1 - set);
        };
    }

    /** The chance that the eye's error is less than {@code c} °C: the logistic curve nearest to the normal one. */
    private static double below(double c) {
        return 1 / (1 + Math.exp(-1.702 * c / EYE_C));
    }

    /** The rise in °C below which it sets with probability {@code share}. */
    double quantileC(double share) {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += weights[i];
            if (sum >= share) {
                return firstC + (i - (sum - share) / weights[i]) * STEP_C;
            }
        }
        return firstC + (SIZE - 1) * STEP_C;
    }
}
