package spoonfall.estimate.warming;

import java.util.Optional;
import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.Inverting;
import spoonfall.estimate.filter.SyrupCurve;

/** Where an estimate begins: what the first reading of the boil, the warming before it and a plan say together. */
public final class Beginning {
    /** Where nothing told the pace, it takes so long to see one. */
    private static final double LEAST_KNOWN_S = 30;

    /** What boils no higher may be water. */
    private static final double LEAST_RISE_C = 0.25;

    /** How fast acid inverts the sugar at first, as a multiple of the usual, and its standard deviation. */
    private static final double PACE = 0.6;

    private static final double PACE_DOUBT = 0.4;

    /** Another fruit's curve is another one by such a part. */
    private static final double SCALE_DOUBT = 0.06;

    /** What a probe is off by, besides what the water boil may be. */
    private static final double PROBE_DOUBT_C = 0.12;

    /** Such a part of how far the water boil may be off is its standard deviation. */
    private static final double BASE_SIGMA = 0.6;

    private final SyrupCurve curve;
    private final double baseSigmaC;
    private final Warming warming = new Warming();
    private Optional<PanPrior> plan = Optional.empty();
    private boolean told;
    private boolean settled;
    private double atT;

    /** {@code baseDoubtC} is how far the water boil may be off, in °C. */
    public Beginning(SyrupCurve curve, double baseDoubtC) {
        this.curve = curve;
        baseSigmaC = Math.hypot(BASE_SIGMA * baseDoubtC, PROBE_DOUBT_C);
    }

    /** Takes what a plan says of the pan. */
    public void expect(PanPrior prior) {
        plan = Optional.of(prior);
    }

    /** How it warms on its way to the boil. */
    public Warming warming() {
        return warming;
    }

    /**
     * Begins the bank with a reading; false if it is too low to tell where the pan is.
     *
     * @param arrived whether the thermometer has had time to arrive
     */
    public boolean begin(double t, double riseC, boolean arrived, FilterBank bank) {
        if (riseC < LEAST_RISE_C) {
            return false;
        }
        settled = arrived;
        atT = t;
        double u = curve.u(riseC / Inverting.firstScale());
        double readDoubtC = Math.hypot(baseSigmaC, SCALE_DOUBT * riseC);
        FirstGuess read = FirstGuess.of(u, warming, t);
        FirstGuess guess = read.with(plan, readDoubtC / -curve.riseSlopeC(u));
        told = read.byWarming() || !guess.equals(read);
        bank.begin(
                new double[] {guess.u(), guess.v(), 0, Inverting.firstScale(), PACE},
                new double[] {guess.uDoubt(), guess.vDoubt(), baseSigmaC, SCALE_DOUBT, PACE_DOUBT},
                guess.vPerU());
        return true;
    }

    /** Whether it began before the thermometer had arrived: once it has, what was made of its creeping is worth nothing. */
    public boolean tooSoon() {
        return !settled;
    }

    /** Whether enough is known for a forecast: at once where warming or a plan told the pace. */
    public boolean ripe(double t) {
        return t - atT >= (told ? 0 : LEAST_KNOWN_S);
    }
}
