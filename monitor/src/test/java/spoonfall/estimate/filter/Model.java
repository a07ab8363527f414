package spoonfall.estimate.filter;

/** The process that every filter of these tests follows: what one of the bank's filters is told, from its own state. */
final class Model {
    static final double VARIANCE = 0.03;
    static final double OFFSET_WANDER = 1e-5;
    static final double SCALE_WANDER = 1e-5;
    private static final double SLOPE_WANDER = 0.04;

    final SyrupCurve curve;
    private final Inverting inverting;

    Model(double pressurePa) {
        curve = new SyrupCurve(pressurePa);
        inverting = new Inverting(curve);
    }

    /** Where a cook begins that first shows {@code riseC}. */
    double[] guesses(double riseC) {
        return new double[] {curve.u(riseC / Inverting.firstScale()), 0.05, 0, Inverting.firstScale(), 0.6};
    }

    /** How far these may be off, in the same order. */
    double[] doubts() {
        return new double[] {1, 0.04, 0.3, 0.06, 0.4};
    }

    double slopeWander(double v) {
        double wander = SLOPE_WANDER * Math.max(0.01, v);
        return wander * wander;
    }

    /** What the scale gains a minute just now; the sugar goes on being inverted meanwhile. */
    double growth(double minutes, double u, double pace) {
        double growth = inverting.growth(u);
        inverting.pass(minutes, u, pace);
        return growth;
    }
}
