package spoonfall.learn;

import java.util.Optional;

/**
 * Where the posterior density is highest, and how sharply it falls off there.
 *
 * @param at the point
 * @param precision the factors of the negative second derivatives of the log density: the Laplace approximation
 */
@SuppressWarnings("ArrayRecordComponent") // made and read within this package
record Peak(double[] at, Cholesky precision) {
    private static final int MOST_STEPS = 200;
    private static final double STEP = 1e-5;
    private static final double FLAT = 1e-9;

    /** Climbs from the middle of the prior by damped Newton steps. */
    static Peak of(SetModel model) {
        int n = model.size();
        double[] at = new double[n];
        double[] gradient = new double[n];
        double height = model.logDensity(at, gradient);
        double damping = 0;
        for (int step = 0; step < MOST_STEPS && steep(gradient); step++) {
            double[][] curvature = curvature(model, at);
            boolean climbed = false;
            while (!climbed && damping < 1e12) {
                Optional<Cholesky> factors = Cholesky.of(curvature, damping);
                if (factors.isPresent()) {
                    double[] next = factors.get().solve(gradient);
                    for (int i = 0; i < n; i++) {
                        next[i] += at[i];
                    }
                    double nextHeight = model.logDensity(next);
                    if (nextHeight > height) {
                        at = next;
                        height = model.logDensity(at, gradient);
                        damping = damping < 1e-3 ? 0 : damping / 10;
                        climbed = true;
                        continue;
                    }
                }
                damping = Math.max(1e-3, damping * 10);
            }
            if (!climbed) {
                break; // the last digits cannot be climbed
            }
        }
        return new Peak(at, factors(curvature(model, at)));
    }

    private static boolean steep(double[] gradient) {
        for (double one : gradient) {
            if (Math.abs(one) > FLAT) {
                return true;
            }
        }
        return false;
    }

    private static Cholesky factors(double[][] curvature) {
        double damping = 0;
        Optional<Cholesky> factors = Cholesky.of(curvature, damping);
        while (factors.isEmpty()) {
            damping = Math.max(1e-6, damping * 10);
            factors = Cholesky.of(curvature, damping);
        }
        return factors.get();
    }

    /** The negative second derivatives, by differences of the gradient. */
    private static double[][] curvature(SetModel model, double[] at) {
        int n = at.length;
        double[][] second = new double[n][n];
        double[] above = new double[n];
        double[] below = new double[n];
        double[] there = at.clone();
        for (int i = 0; i < n; i++) {
            double step = STEP * Math.max(1e-3, Math.min(1, Math.abs(at[i])));
            there[i] = at[i] + step;
            model.logDensity(there, above);
            there[i] = at[i] - step;
            model.logDensity(there, below);
            there[i] = at[i];
            for (int j = 0; j < n; j++) {
                second[i][j] = (below[j] - above[j]) / (2 * step);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                second[i][j] = (second[i][j] + second[j][i]) / 2;
                second[j][i] = second[i][j];
            }
        }
        return second;
    }
}
