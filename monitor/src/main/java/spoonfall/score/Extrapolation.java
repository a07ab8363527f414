package spoonfall.score;

import java.util.OptionalDouble;
import spoonfall.probe.trace.Trace;

/** What anybody could forecast from the readings alone: a least-squares curve carried on to the gel point. */
enum Extrapolation {
    /** A straight line through the last five minutes. */
    LINE(300, 1),
    /** A parabola through the last ten minutes. */
    PARABOLA(600, 2);

    /** A curve that gets there later than that is flat. */
    private static final double LATEST_S = 4 * 3600;

    private static final int LEAST_READINGS = 6;
    private static final double LEAST_COVER_S = 60;

    private final double windowS;
    private final int degree;

    Extrapolation(double windowS, int degree) {
        this.windowS = windowS;
        this.degree = degree;
    }

    /**
     * Seconds from {@code t} until the curve reaches {@code gelPointC}; empty if it never does within four hours. Readings before
     * {@code boilT} are left out: nobody would lay a line through the way up to the boil.
     */
    OptionalDouble etaS(Trace trace, double boilT, double t, double gelPointC) {
        double[][] normal = new double[degree + 1][degree + 2];
        int count = 0;
        double earliest = t;
        for (int i = 0; i < trace.size() && trace.elapsedS(i) <= t; i++) {
            OptionalDouble reading = trace.temperatureC(i);
            if (trace.elapsedS(i) >= Math.max(boilT, t - windowS) && reading.isPresent()) {
                double x = (trace.elapsedS(i) - t) / windowS;
                take(normal, x, reading.getAsDouble() - gelPointC);
                earliest = Math.min(earliest, trace.elapsedS(i));
                count++;
            }
        }
        if (count < LEAST_READINGS || t - earliest < LEAST_COVER_S) {
            return OptionalDouble.empty();
        }
        OptionalDouble root = root(solve(normal));
        boolean sensible = root.isPresent() && root.getAsDouble() * windowS <= LATEST_S;
        return sensible ? OptionalDouble.of(root.getAsDouble() * windowS) : OptionalDouble.empty();
    }

    private void take(double[][] normal, double x, double y) {
        for (int row = 0; row <= degree; row++) {
            for (int column = 0; column <= degree; column++) {
                normal[row][column] += Math.pow(x, row + column);
            }
            normal[row][degree + 1] += Math.pow(x, row) * y;
        }
    }

    private double[] solve(double[][] m) {
        for (int i = 0; i <= degree; i++) {
            for (int row = i + 1; row <= degree; row++) {
                double times = m[row][i] / m[i][i];
                for (int column = i; column <= degree + 1; column++) {
                    m[row][column] -= times * m[i][column];
                }
            }
        }
        double[] solution = new double[degree + 1];
        for (int i = degree; i >= 0; i--) {
            double rest = m[i][degree + 1];
            for (int column = i + 1; column <= degree; column++) {
                rest -= m[i][column] * solution[column];
            }
            solution[i] = rest / m[i][i];
        }
        return solution;
    }

    /** The first crossing from below at or after now; 0 when the curve is there already. */
    private OptionalDouble root(double[] c) {
        if (c[0] >= 0) {
            return OptionalDouble.of(0);
        }
        double bend = degree == 2 ? c[2] : 0;
        double x;
        if (bend == 0) {
            x = -c[0] / c[1];
        } else {
            double inside = c[1] * c[1] - 4 * bend * c[0];
            if (inside < 0) {
                return OptionalDouble.empty();
            }
            x = 2 * -c[0] / (c[1] + Math.sqrt(inside));
        }
        return Double.isFinite(x) && x >= 0 ? OptionalDouble.of(x) : OptionalDouble.empty();
    }
}
