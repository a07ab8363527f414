package spoonfall.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Beliefs drawn from the posterior by elliptical slice sampling (Murray, Adams and MacKay 2010) about the peak, its
 * Laplace approximation made a little wider so that no tail is missed. The same batches give the same draws.
 */
final class Draws {
    private static final double WIDER = 1.3;
    private static final int SETTLING = 100;
    private static final long SEED = 1;

    private final SetModel model;
    private final Peak peak;
    private final SplittableRandom random = new SplittableRandom(SEED);

    private Draws(SetModel model, Peak peak) {
        this.model = model;
        this.peak = peak;
    }

    /** So many beliefs. */
    static List<Taste> of(SetModel model, int count) {
        Draws draws = new Draws(model, Peak.of(model));
        return draws.walk(count);
    }

    private List<Taste> walk(int count) {
        int n = model.size();
        double[] now = new double[n];
        double[] at = place(now);
        double height = height(now, at);
        List<Taste> tastes = new ArrayList<>(count);
        double[] next = new double[n];
        for (int i = -SETTLING; i < count; i++) {
            double[] other = new double[n];
            for (int j = 0; j < n; j++) {
                other[j] = random.nextGaussian();
            }
            double floor = height + Math.log(1 - random.nextDouble());
            double angle = random.nextDouble() * 2 * Math.PI;
            double least = angle - 2 * Math.PI;
            double most = angle;
            double nextHeight;
            do {
                double cos = Math.cos(angle);
                double sin = Math.sin(angle);
                for (int j = 0; j < n; j++) {
                    next[j] = cos * now[j] + sin * other[j];
                }
                at = place(next);
                nextHeight = height(next, at);
                if (angle < 0) {
                    least = angle;
                } else {
                    most = angle;
                }
                angle = least + (most - least) * random.nextDouble();
            } while (nextHeight < floor);
            System.arraycopy(next, 0, now, 0, n);
            height = nextHeight;
            if (i >= 0) {
                tastes.add(model.taste(at));
            }
        }
        return tastes;
    }

    private double[] place(double[] standard) {
        double[] at = peak.precision().spread(standard);
        for (int i = 0; i < at.length; i++) {
            at[i] = peak.at()[i] + WIDER * at[i];
        }
        return at;
    }

    /** How much the posterior is higher than what is drawn from, as a logarithm. */
    private double height(double[] standard, double[] at) {
        double squares = 0;
        for (double one : standard) {
            squares += one * one;
        }
        return model.logDensity(at) + squares / 2;
    }
}
