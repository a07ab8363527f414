package spoonfall.estimate.filter;

/**
 * The same pan in the textbook's form (Bar-Shalom, Li and Kirubarajan, Estimation with Applications to Tracking and
 * Navigation, 2001, table 5.2.4-1 and 10.3; from memory): P = F P Fᵀ + Q, S = H P Hᵀ + R, W = P Hᵀ / S,
 * P = (I - W H) P. Full matrices, nothing clever.
 */
final class DensePan {
    private static final int N = PanFilter.SIZE;

    private final Model model;
    private double t;
    private double[] x;
    private double[][] p = new double[N][N];

    DensePan(Model model, double t, double[] guesses, double[] doubts) {
        this.model = model;
        this.t = t;
        x = guesses.clone();
        for (int i = 0; i < N; i++) {
            p[i][i] = doubts[i] * doubts[i];
        }
    }

    void accept(double at, double riseC) {
        double dt = (at - t) / 60;
        t = at;
        double growth = model.growth(dt, x[0], x[4]);
        double w = model.slopeWander(x[1]);
        double[][] f = identity();
        f[0][1] = -dt;
        f[3][4] = growth * dt;
        double[][] q = new double[N][N];
        q[0][0] = w * Math.pow(dt, 3) / 3;
        q[0][1] = -w * dt * dt / 2;
        q[1][0] = q[0][1];
        q[1][1] = w * dt;
        q[2][2] = Model.OFFSET_WANDER * dt;
        q[3][3] = Model.SCALE_WANDER * dt;
        x = times(f, x);
        p = plus(times(times(f, p), transposed(f)), q);

        double[] h = {x[3] * model.curve.riseSlopeC(x[0]), 0, 1, model.curve.riseC(x[0]), 0};
        double[] ph = times(p, h);
        double s = Model.VARIANCE;
        for (int i = 0; i < N; i++) {
            s += h[i] * ph[i];
        }
        double off = riseC - (x[3] * model.curve.riseC(x[0]) + x[2]);
        double[][] keeps = identity();
        for (int i = 0; i < N; i++) {
            x[i] += ph[i] / s * off;
            for (int j = 0; j < N; j++) {
                keeps[i][j] -= ph[i] / s * h[j];
            }
        }
        p = times(keeps, p);
    }

    double[] state() {
        return x;
    }

    double[][] covariance() {
        return p;
    }

    private static double[][] identity() {
        double[][] one = new double[N][N];
        for (int i = 0; i < N; i++) {
            one[i][i] = 1;
        }
        return one;
    }

    private static double[] times(double[][] a, double[] b) {
        double[] c = new double[N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                c[i] += a[i][j] * b[j];
            }
        }
        return c;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                for (int k = 0; k < N; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }

    private static double[][] plus(double[][] a, double[][] b) {
        double[][] c = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                c[i][j] = a[i][j] + b[i][j];
            }
        }
        return c;
    }

    private static double[][] transposed(double[][] a) {
        double[][] c = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                c[i][j] = a[j][i];
            }
        }
        return c;
    }
}
