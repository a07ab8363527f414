package spoonfall.physics;

/**
 * Boiling syrup. Its boiling point solves {@code psat(T) * aw(solids) = p}, where the water activity is
 * Norrish's: {@code ln aw = ln xw - (sum of sqrt(K_i) x_i)^2} over mole fractions, with K = 6.47 for sucrose
 * and 2.25 for glucose and fructose (constants from memory; the form as in Baeza et al. 2010).
 *
 * <p>{@code solids} is the fraction of the mass that is dissolved sugar, 0 to {@link #MOST_SOLIDS}; {@code
 * inverted} is the share of that sugar, by mass, that acid and heat have split into glucose and fructose, 0 to 1.
 */
public final class Syrup {
    /** The thickest syrup these functions speak of. */
    public static final double MOST_SOLIDS = 0.90;

    /** The share that acid and heat have typically split in a marmalade near its setting point. */
    public static final double TYPICAL_INVERTED = 0.2;

    private static final double SUCROSE_G_PER_MOL = 342.297;
    private static final double HEXOSE_G_PER_MOL = 180.156;
    private static final double WATER_G_PER_MOL = 18.015;
    private static final double ROOT_K_SUCROSE = Math.sqrt(6.47);
    private static final double ROOT_K_HEXOSE = Math.sqrt(2.25);
    private static final double STEP = 1e-6;
    private static final double CLOSE_C = 1e-10;

    private Syrup() {}

    /** How much less readily water leaves than pure water would: 1 for water, falling with the solids. */
    public static double waterActivity(double solids, double inverted) {
        check(solids, inverted);
        double sucroseMol = solids * (1 - inverted) / SUCROSE_G_PER_MOL;
        double hexoseMol = solids * inverted / HEXOSE_G_PER_MOL;
        double waterMol = (1 - solids) / WATER_G_PER_MOL;
        double allMol = sucroseMol + hexoseMol + waterMol;
        double pull = (ROOT_K_SUCROSE * sucroseMol + ROOT_K_HEXOSE * hexoseMol) / allMol;
        return waterMol / allMol * Math.exp(-pull * pull);
    }

    /** The temperature in °C at which the syrup boils under {@code pressurePa}. */
    public static double boilingPointC(double pressurePa, double solids, double inverted) {
        return Water.boilingPointC(pressurePa / waterActivity(solids, inverted));
    }

    /** How far in °C the syrup boils above plain water under {@code pressurePa}. */
    public static double riseC(double pressurePa, double solids, double inverted) {
        return boilingPointC(pressurePa, solids, inverted) - Water.boilingPointC(pressurePa);
    }

    /** How much the rise grows with the solids, in °C for a change of the fraction by 1. */
    public static double riseSlopeC(double pressurePa, double solids, double inverted) {
        double low = Math.max(0, solids - STEP);
        double high = Math.min(MOST_SOLIDS, solids + STEP);
        return (boilingPointC(pressurePa, high, inverted) - boilingPointC(pressurePa, low, inverted)) / (high - low);
    }

    /**
     * The solids of a syrup that boils {@code riseC} above plain water: the inverse of {@link #riseC}. 0 for a
     * rise of nothing or less, {@link #MOST_SOLIDS} for one beyond it.
     */
    public static double solids(double pressurePa, double riseC, double inverted) {
        if (!Double.isFinite(riseC)) {
            throw new IllegalArgumentException("the rise must be a finite number, not " + riseC);
        }
        check(0, inverted);
        double targetC = Water.boilingPointC(pressurePa) + riseC;
        if (riseC <= 0) {
            return 0;
        }
        if (boilingPointC(pressurePa, MOST_SOLIDS, inverted) <= targetC) {
            return MOST_SOLIDS;
        }
        // Newton, kept inside a shrinking bracket: the curve is convex, so a few steps do.
        double low = 0;
        double high = MOST_SOLIDS;
        double solids = Math.min(0.85, 0.35 + 0.07 * riseC);
        for (int i = 0; i < 60; i++) {
            double missC = boilingPointC(pressurePa, solids, inverted) - targetC;
            if (Math.abs(missC) < CLOSE_C) {
                break;
            }
            if (missC > 0) {
                high = solids;
            } else {
                low = solids;
            }
            double next = solids - missC / riseSlopeC(pressurePa, solids, inverted);
            solids = next > low && next < high ? next : (low + high) / 2;
        }
        return solids;
    }

    private static void check(double solids, double inverted) {
        if (!(solids >= 0 && solids <= MOST_SOLIDS)) {
            throw new IllegalArgumentException("solids must be a fraction from 0 to 0.9, not " + solids);
        }
        if (!(inverted >= 0 && inverted <= 1)) {
            throw new IllegalArgumentException("inverted must be a fraction from 0 to 1, not " + inverted);
        }
    }
}
