package spoonfall.lab.varied;

import spoonfall.lab.PanPhysics;

/**
 * The boiling point of one cook's syrup. Between Starzak and Peacock's curve of 1997 and Browne's table of 1912
 * (stored copy; below 40 % from memory), scaled by a few percent, raised as the sugar is inverted. Published
 * tables differ by about as much.
 */
final class SyrupCurve {
    private static final double[] BROWNE_PERCENT = {0, 10, 20, 30, 40, 50, 60, 62, 64, 66, 68, 70, 80, 90.8};
    private static final double[] BROWNE_C = {0, 0.4, 0.6, 1.0, 1.5, 2.0, 3.0, 3.4, 4.0, 4.8, 5.6, 6.5, 12.0, 30.0};
    private static final int STEPS = 900;
    private static final double MOST_SOLIDS = 0.9;
    private static final double STANDARD_PA = 101_325;

    private final double waterBoilC;
    private final double[] riseC = new double[STEPS + 1];

    /**
     * A curve.
     *
     * @param pressurePa true air pressure
     * @param browneShare how far it follows Browne, 0 to 1
     * @param scale what its rise is multiplied by
     */
    SyrupCurve(double pressurePa, double browneShare, double scale) {
        waterBoilC = PanPhysics.boilingPointC(pressurePa, 0);
        double thinner = starzakC(pressurePa, 0.65) / starzakC(STANDARD_PA, 0.65);
        MonotoneCurve browne = new MonotoneCurve(BROWNE_PERCENT, BROWNE_C);
        for (int i = 0; i <= STEPS; i++) {
            double solids = MOST_SOLIDS * i / STEPS;
            double starzak = starzakC(pressurePa, solids);
            double table = thinner * browne.at(100 * solids);
            riseC[i] = scale * (browneShare * table + (1 - browneShare) * starzak);
        }
    }

    /** Where plain water boils, in °C. */
    double waterBoilC() {
        return waterBoilC;
    }

    /** Where the syrup boils, in °C; {@code inverted} is the share of its sugar that is inverted. */
    double boilC(double solids, double inverted) {
        double place = Math.min(STEPS - 1e-9, Math.max(0, solids / MOST_SOLIDS * STEPS));
        int i = (int) place;
        double rise = riseC[i] + (place - i) * (riseC[i + 1] - riseC[i]);
        return waterBoilC + rise * (1 + inversionGain(solids) * inverted);
    }

    /** Rise gained by full inversion; fitted to Norrish's equation at 60, 65 and 68 % solids (1.12, 1.117, 1.11 at 0.2). */
    private static double inversionGain(double solids) {
        return Math.min(0.9, 0.62 - 0.84 * (solids - 0.6));
    }

    private static double starzakC(double pressurePa, double solids) {
        return PanPhysics.boilingPointC(pressurePa, solids) - PanPhysics.boilingPointC(pressurePa, 0);
    }
}
