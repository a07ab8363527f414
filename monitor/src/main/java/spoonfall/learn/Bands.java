package spoonfall.learn;

import java.util.List;
import spoonfall.book.Firmness;

/** The five outcomes as bands on the scale of the log odds: how likely one is for a batch that lies at some place. */
final class Bands {
    /** From the softest to the firmest. */
    static final List<Firmness> ORDER =
            List.of(Firmness.RUNNY, Firmness.SOFT, Firmness.RIGHT, Firmness.FIRM, Firmness.STIFF);

    static final int COUNT = 5;

    /** Where a band begins; the lowest begins nowhere. */
    private final double[] from = new double[COUNT];

    private final double[] logWidth = new double[COUNT];
    private final double[] widthSlope = new double[COUNT];

    Bands(Taste taste) {
        from[1] = -taste.halfRight() - taste.soft();
        from[2] = -taste.halfRight();
        from[3] = taste.halfRight();
        from[4] = taste.halfRight() + taste.firm();
        double[] widths = {0, taste.soft(), 2 * taste.halfRight(), taste.firm(), 0};
        for (int k = 1; k < COUNT - 1; k++) {
            logWidth[k] = Math.log(-Math.expm1(-widths[k]));
            widthSlope[k] = 1 / Math.expm1(widths[k]);
        }
    }

    /**
     * The logarithm of the chance of band {@code k}: with L the logistic function, L(high) - L(low) = L(high) L(-low) (1
     * - e^(low - high)), which loses nothing far out.
     */
    double logChance(int k, double place) {
        double low = k == 0 ? 0 : softplus(from[k] - place);
        double high = k == COUNT - 1 ? 0 : softplus(place - from[k + 1]);
        return logWidth[k] - low - high;
    }

    /**
     * Adds by how much that grows with the beginnings of the bands.
     *
     * @return by how much it grows with the place
     */
    double addSlopes(int k, double place, double[] byFrom) {
        double byLow = k == 0 ? 0 : -SetModel.logistic(from[k] - place) - widthSlope[k];
        double byHigh = k == COUNT - 1 ? 0 : SetModel.logistic(place - from[k + 1]) + widthSlope[k];
        byFrom[k] += byLow;
        if (k < COUNT - 1) {
            byFrom[k + 1] += byHigh;
        }
        return -(byLow + byHigh);
    }

    /** log(1 + e^x), without overflow. */
    private static double softplus(double x) {
        return Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)));
    }
}
