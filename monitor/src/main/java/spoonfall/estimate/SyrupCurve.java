package spoonfall.estimate;

import spoonfall.physics.Syrup;

/** The rise of boiling syrup over {@code u = all mass / solids mass}, under one pressure. */
final class SyrupCurve {
    private static final double LEAST_U = 1 / Syrup.MOST_SOLIDS;
    private static final double MOST_U = 20;

    private final double pressurePa;

    SyrupCurve(double pressurePa) {
        this.pressurePa = pressurePa;
    }

    /** The rise in °C at {@code u}; beyond the curve's ends that of the end. */
    double riseC(double u) {
        return Syrup.riseC(pressurePa, 1 / clamped(u), Syrup.TYPICAL_INVERTED);
    }

    /** How much the rise grows with {@code u}, in °C for a change by 1: negative. */
    double riseSlopeC(double u) {
        double within = clamped(u);
        return -Syrup.riseSlopeC(pressurePa, 1 / within, Syrup.TYPICAL_INVERTED) / (within * within);
    }

    /** The solids at {@code u}, as a fraction within the curve's ends. */
    double solids(double u) {
        return 1 / clamped(u);
    }

    /** Where the syrup boils, in °C. */
    double boilingPointC(double u) {
        return Syrup.boilingPointC(pressurePa, 1 / clamped(u), Syrup.TYPICAL_INVERTED);
    }

    /** The {@code u} at which the syrup rises by {@code riseC}. */
    double u(double riseC) {
        double solids = Syrup.solids(pressurePa, riseC, Syrup.TYPICAL_INVERTED);
        return solids > 1 / MOST_U ? 1 / solids : MOST_U;
    }

    private static double clamped(double u) {
        return Math.max(LEAST_U, Math.min(MOST_U, u));
    }
}
