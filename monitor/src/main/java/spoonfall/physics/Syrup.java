package spoonfall.physics;

/**
 * Boiling syrup. Its boiling point solves {@code psat(T) * aw(solids) = p}, with the saturation line of
 * {@link Water} and the water activity of {@link Norrish}.
 *
 * <p>{@code solids} is the fraction of the mass that is dissolved sugar, 0 to {@link #MOST_SOLIDS}; {@code
 * inverted} is the share of that sugar, by mass, that acid and heat have split into glucose and fructose, 0 to 1.
 */
public final class Syrup {
    /** The thickest syrup these functions speak of. */
    public static final double MOST_SOLIDS = 0.90;

    /** The share that acid and heat have typically split in a marmalade near its setting point. */
    public static final double TYPICAL_INVERTED = 0.2;

    /** Published tables differ among themselves as if their solids were this far apart (one standard deviation). */
    private static final double TABLES_SOLIDS = 0.016;

    /** And, in thin syrups, as if their thermometers were this many °C apart. */
    private static final double TABLES_C = 0.14;

    private static final double CLOSE_C = 1e-10;

    private Syrup() {}

    /** How much less readily water leaves than pure water would: 1 for water, falling with the solids. */
    public static double waterActivity(double solids, double inverted) {
        check(solids, inverted);
        return new Norrish(solids, inverted).activity();
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
        check(solids, inverted);
        Norrish syrup = new Norrish(solids, inverted);
        return slopeC(pressurePa / syrup.activity(), syrup.logSlopeBySolids(inverted));
    }

    /** How much the rise grows with the inverted share, in °C for a change of the share by 1. */
    public static double riseByInvertedC(double pressurePa, double solids, double inverted) {
        check(solids, inverted);
        Norrish syrup = new Norrish(solids, inverted);
        return slopeC(pressurePa / syrup.activity(), syrup.logSlopeByInverted(solids));
    }

    private static double slopeC(double waterPa, double activityLogSlope) {
        return -waterPa * Water.boilingSlopeCPerPa(waterPa) * activityLogSlope;
    }

    /**
     * How far to trust {@link #riseC}: one standard deviation in °C of the curve itself, from how far published
     * tables lie from it (docs/science.md). It holds for a known {@code inverted}; for one that is only guessed,
     * {@link #riseByInvertedC} times its doubt comes on top.
     */
    public static double doubtC(double pressurePa, double solids, double inverted) {
        return Math.hypot(TABLES_C, TABLES_SOLIDS * riseSlopeC(pressurePa, solids, inverted));
    }

    /** How far to trust {@link #solids}, found from a rise: one standard deviation of the curve, as a fraction. */
    public static double solidsDoubt(double pressurePa, double solids, double inverted) {
        double slopeC = riseSlopeC(pressurePa, solids, inverted);
        return Math.hypot(TABLES_C / slopeC, TABLES_SOLIDS);
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

    static void check(double solids, double inverted) {
        if (!(solids >= 0 && solids <= MOST_SOLIDS)) {
            throw new IllegalArgumentException("solids must be a fraction from 0 to 0.9, not " + solids);
        }
        if (!(inverted >= 0 && inverted <= 1)) {
            throw new IllegalArgumentException("inverted must be a fraction from 0 to 1, not " + inverted);
        }
    }
}
