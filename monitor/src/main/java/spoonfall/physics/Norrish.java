package spoonfall.physics;

/**
 * The water activity of a syrup after Norrish, and its exact derivatives: {@code ln aw = ln xw - pull^2}, where
 * {@code pull} is the sum of {@code sqrt(K_i) x_i} over the sugars' mole fractions, with K = 6.47 for sucrose and
 * 2.25 for glucose and fructose (constants from memory; the form as in Baeza et al. 2010). One kilogram of syrup
 * is reckoned with throughout.
 */
final class Norrish {
    private static final double SUCROSE_PER_MOL = 342.297;
    private static final double HEXOSE_PER_MOL = 180.156;
    private static final double WATER_PER_MOL = 18.015;
    private static final double ROOT_K_SUCROSE = Math.sqrt(6.47);
    private static final double ROOT_K_HEXOSE = Math.sqrt(2.25);

    private final double waterMol;
    private final double allMol;
    private final double pull;

    /** A syrup of these solids, of which the share {@code inverted} is glucose and fructose. */
    Norrish(double solids, double inverted) {
        double sucroseMol = solids * (1 - inverted) / SUCROSE_PER_MOL;
        double hexoseMol = solids * inverted / HEXOSE_PER_MOL;
        waterMol = (1 - solids) / WATER_PER_MOL;
        allMol = sucroseMol + hexoseMol + waterMol;
        pull = (ROOT_K_SUCROSE * sucroseMol + ROOT_K_HEXOSE * hexoseMol) / allMol;
    }

    /** The water activity: 1 for water, falling with the solids. */
    double activity() {
        return waterMol / allMol * Math.exp(-pull * pull);
    }

    /** By how much the activity's natural logarithm changes with the solids. */
    double logSlopeBySolids(double inverted) {
        return logSlope((1 - inverted) / SUCROSE_PER_MOL, inverted / HEXOSE_PER_MOL, -1 / WATER_PER_MOL);
    }

    /** By how much the activity's natural logarithm changes with the inverted share. */
    double logSlopeByInverted(double solids) {
        return logSlope(-solids / SUCROSE_PER_MOL, solids / HEXOSE_PER_MOL, 0);
    }

    private double logSlope(double sucroseSlope, double hexoseSlope, double waterSlope) {
        double allSlope = sucroseSlope + hexoseSlope + waterSlope;
        double pullSlope = (ROOT_K_SUCROSE * sucroseSlope + ROOT_K_HEXOSE * hexoseSlope - pull * allSlope) / allMol;
        return waterSlope / waterMol - allSlope / allMol - 2 * pull * pullSlope;
    }
}
