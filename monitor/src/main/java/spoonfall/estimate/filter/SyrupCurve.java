package spoonfall.estimate.filter;

import java.util.Optional;
import spoonfall.physics.Inversion;
import spoonfall.physics.Syrup;
import spoonfall.physics.Water;

/**
 * The rise of boiling syrup over {@code u = all mass / solids mass}, under one pressure, and how fast its sugar is inverted there.
 * Both are tabulated over the solids: the rise to a millionth of a degree, the rate to one part in 100,000. So are the solids over
 * the rise, for a forecast asks for them a dozen times.
 */
public final class SyrupCurve {
    private static final double MOST_U = 20;
    private static final double LEAST_SOLIDS = 1 / MOST_U;
    private static final int PARTS = 512;

    /** Of the solids over the rise, which bend more where the syrup is thin. */
    private static final int FINE_PARTS = 2048;

    /** In the middle of what sets, pH 2.8 to 3.4 (So Easy to Preserve). */
    private static final double USUAL_PH = 3.1;

    /** Half of a step over which the slope of the inversion's rate is taken. */
    private static final double SLOPE_STEP = 1e-5;

    /** The one that was made last, of about 100 KB: the pans of a kitchen share it, and who goes through a cook again has it at once. */
    private static volatile Optional<SyrupCurve> latest = Optional.empty();

    private final double pressurePa;
    private final CurveTable rises;
    private final CurveTable inversions;
    private final CurveTable solidsByRise;
    private final double mostC;

    SyrupCurve(double pressurePa) {
        this.pressurePa = pressurePa;
        double waterC = Water.boilingPointC(pressurePa);
        rises = new CurveTable(
                0,
                Syrup.MOST_SOLIDS,
                PARTS,
                solids -> Syrup.boilingPointC(pressurePa, solids, Syrup.TYPICAL_INVERTED) - waterC,
                (solids, riseC) -> Syrup.riseSlopeC(pressurePa, solids, Syrup.TYPICAL_INVERTED));
        inversions = new CurveTable(
                0,
                Syrup.MOST_SOLIDS,
                PARTS,
                solids -> inversionPerMin(waterC, solids),
                (solids, perMin) -> inversionSlope(waterC, solids));
        mostC = rises.value(Syrup.MOST_SOLIDS);
        solidsByRise = new CurveTable(0, mostC, FINE_PARTS, rises::inverse, (riseC, solids) -> 1 / rises.slope(solids));
    }

    /** The curve under that pressure; nobody can change one, so that it may be another pan's as well. */
    public static SyrupCurve under(double pressurePa) {
        Optional<SyrupCurve> made = latest.filter(curve -> curve.pressurePa == pressurePa);
        if (made.isEmpty()) {
            made = Optional.of(new SyrupCurve(pressurePa));
            latest = made;
        }
        return made.get();
    }

    /** The rise in °C at {@code u}; beyond the curve's ends that of the end. */
    double riseC(double u) {
        return rises.value(solids(u));
    }

    /** How much the rise grows with {@code u}, in °C for a change by 1: negative. */
    public double riseSlopeC(double u) {
        double solids = solids(u);
        return -rises.slope(solids) * solids * solids;
    }

    /** The {@code u} at which the syrup rises by {@code riseC}. */
    public double u(double riseC) {
        return 1 / Math.max(LEAST_SOLIDS, solidsAt(riseC));
    }

    /** The solids, as a fraction, at which it rises by {@code riseC}: from nothing to the thickest syrup of the curve. */
    public double solidsAt(double riseC) {
        if (riseC <= 0) {
            return 0;
        }
        return riseC < mostC ? solidsByRise.value(riseC) : Syrup.MOST_SOLIDS;
    }

    /** The part of the remaining sucrose that splits in a minute while the syrup boils at {@code u}, at the usual pH. */
    double inversionPerMin(double u) {
        return inversions.value(solids(u));
    }

    private double inversionPerMin(double waterC, double solids) {
        return Inversion.ratePerMin(waterC + rises.value(solids), solids, USUAL_PH);
    }

    private double inversionSlope(double waterC, double solids) {
        double low = Math.max(0, solids - SLOPE_STEP);
        double high = Math.min(Syrup.MOST_SOLIDS, solids + SLOPE_STEP);
        return (inversionPerMin(waterC, high) - inversionPerMin(waterC, low)) / (high - low);
    }

    /** The solids at {@code u}, as a fraction within the curve's ends. */
    private static double solids(double u) {
        return Math.max(LEAST_SOLIDS, Math.min(Syrup.MOST_SOLIDS, 1 / u));
    }
}
