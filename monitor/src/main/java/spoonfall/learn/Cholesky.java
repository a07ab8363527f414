package spoonfall.learn;

import java.util.Optional;

/** A symmetric matrix as the product of a lower triangle with its transpose. */
final class Cholesky {
    private final double[][] lower;

    private Cholesky(double[][] lower) {
        this.lower = lower;
    }

    /** The factors of a matrix with {@code more} added to its diagonal; empty unless that is positive definite. */
    static Optional<Cholesky> of(double[][] matrix, double more) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j] + (i == j ? more : 0);
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        return Optional.empty();
                    }
                    lower[i][i] = Math.sqrt(sum);
                } else {
                    lower[i][j] = sum / lower[j][j];
                }
            }
        }
        return Optional.of(new Cholesky(lower));
    }

    /** What the matrix makes {@code right} of. */
    double[] solve(double[] right) {
        int n = lower.length;
        double[] half = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = right[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i][k] * half[k];
            }
            half[i] = sum / lower[i][i];
        }
        return spread(half);
    }

    /** What the transpose of the lower triangle makes {@code right} of: of standard normal numbers, a draw of which the matrix is the precision. */
    double[] spread(double[] right) {
        int n = lower.length;
        double[] solved = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = right[i];
            for (int k = i + 1; k < n; k++) {
                sum -= lower[k][i] * solved[k];
            }
            solved[i] = sum / lower[i][i];
        }
        return solved;
    }
}
