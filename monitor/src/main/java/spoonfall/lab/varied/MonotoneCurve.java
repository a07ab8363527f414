package spoonfall.lab.varied;

/** A smooth curve through a table that climbs wherever the table does (Fritsch and Butland's slopes of 1984). */
final class MonotoneCurve {
    private final double[] xs;
    private final double[] ys;
    private final double[] slopes;

    MonotoneCurve(double[] xs, double[] ys) {
        this.xs = xs.clone();
        this.ys = ys.clone();
        slopes = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            slopes[i] = i == 0 ? secant(0) : i == xs.length - 1 ? secant(i - 1) : inner(i);
        }
    }

    /** The value at {@code x}, which is kept within the table. */
    double at(double x) {
        double inside = Math.max(xs[0], Math.min(xs[xs.length - 1], x));
        int i = 0;
        while (i < xs.length - 2 && inside > xs[i + 1]) {
            i++;
        }
        double h = xs[i + 1] - xs[i];
        double s = (inside - xs[i]) / h;
        double s2 = s * s;
        double s3 = s2 * s;
        return (2 * s3 - 3 * s2 + 1) * ys[i]
                + (s3 - 2 * s2 + s) * h * slopes[i]
                + (3 * s2 - 2 * s3) * ys[i + 1]
                + (s3 - s2) * h * slopes[i + 1];
    }

    private double secant(int i) {
        return (ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]);
    }

    private double inner(int i) {
        double before = secant(i - 1);
        double after = secant(i);
        if (before * after <= 0) {
            return 0;
        }
        double hBefore = xs[i] - xs[i - 1];
        double hAfter = xs[i + 1] - xs[i];
        double share = (hBefore + 2 * hAfter) / (3 * (hBefore + hAfter));
        return before * after / (share * after + (1 - share) * before);
    }
}
