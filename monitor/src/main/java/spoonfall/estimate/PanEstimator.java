package spoonfall.estimate;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.estimate.filter.Ahead;
import spoonfall.estimate.filter.Arrival;
import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.Oracle;
import spoonfall.estimate.filter.SyrupCurve;
import spoonfall.estimate.warming.Lateness;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.estimate.warming.WarmedByHand;
import spoonfall.estimate.warming.Warming;
import spoonfall.estimate.warming.WarmingLine;

/**
 * Follows one boiling pan. It starts itself, learns how noisy the thermometer is, sits out stirs and set tests, begins
 * again where water was added, and says when a rise will be reached, or nothing when it does not know.
 *
 * <p>Times are seconds of the cook and must not run backwards. Not safe for use by several threads.
 */
public final class PanEstimator {
    /** Nine in ten are above so many standard deviations below. */
    private static final double NINETY_PERCENT = 1.28;

    private final boolean byHand;
    private final SyrupCurve curve;
    private final Lateness lateness = new Lateness();
    private final WarmedByHand warmed = new WarmedByHand();
    private final BoilingPan pan;
    private final FilterBank bank;
    private final Oracle oracle;

    /**
     * An estimator that knows nothing yet.
     *
     * @param pressurePa air pressure at the pan
     * @param baseDoubtC how far the water boil may be off, in °C
     * @param byHand whether readings are minutes apart, each to the nearest mark of a scale
     */
    public PanEstimator(double pressurePa, double baseDoubtC, boolean byHand) {
        this.byHand = byHand;
        curve = SyrupCurve.under(pressurePa);
        pan = new BoilingPan(curve, baseDoubtC, byHand);
        bank = pan.bank();
        oracle = new Oracle(curve, bank, pan.hindsight().record(), byHand);
    }

    /** Takes what a plan says of the pan, for when it begins to boil. */
    public void expect(PanPrior prior) {
        pan.beginning().expect(prior);
    }

    /** Takes a reading that tells something of the pan, as the rise above the water boil in °C. */
    public void accept(double t, double riseC) {
        if (!byHand) {
            lateness.accept(t, riseC);
        }
        pan.accept(t, riseC);
    }

    /**
     * Takes note of how fast the pan warms shortly before the boil, which tells how much heat goes in.
     *
     * @param riseC where it stands, in °C above the water boil: negative, until the boil is seen
     * @param perMinC in °C per minute
     */
    public void warms(double t, double riseC, double perMinC) {
        if (riseC <= WarmingLine.FROM_C) {
            return;
        }
        // What is read only now and then stands in between.
        double warmedC = byHand ? warmed.riseC(t, riseC, perMinC) : riseC;
        pan.beginning().warming().observe(t, warmedC, perMinC);
    }

    /**
     * Ends a second.
     *
     * @param follow whether the pan boils or stands off the heat after a boil; else everything is forgotten
     * @param settled whether it has boiled long enough for the thermometer to have arrived: then it begins anew, once it warms no more
     * @param cooling whether the pan stands off the heat, so that low readings are no noise
     * @param thermometerStepC smallest step that the thermometer has shown
     */
    public void endSecond(double t, boolean follow, boolean settled, boolean cooling, double thermometerStepC) {
        lateness.endSecond(t, follow);
        pan.endSecond(t, follow, settled, cooling, thermometerStepC);
    }

    /** What was read lately tells nothing of the pan, which boils on: what is known of it is kept. */
    public void skip() {
        pan.skip();
    }

    /**
     * The pan stands off the heat, or is not yet back at the boil: no water leaves, and what was read lately tells nothing of
     * it. To be called every second instead of {@link #endSecond} for as long as that lasts.
     */
    public void pause(double t) {
        pan.pause(t);
    }

    /** Becomes another pan, as when its sugar goes in: how fast it warmed is all that is kept. */
    public void anew() {
        pan.anew();
    }

    /** When {@code riseC} will be reached, counted from {@code t}; empty when that would be a guess. */
    public Optional<Arrival> arrival(double t, double riseC) {
        if (!pan.begun() || !pan.beginning().ripe(t)) {
            return Optional.empty();
        }
        return oracle.arrival(riseC, aheadS(t));
    }

    /** The rise in °C at which a pan boiled that has fallen from there, until it is back; empty for others. */
    public OptionalDouble fellFromC() {
        return pan.fell() ? OptionalDouble.of(bank.riseC()) : OptionalDouble.empty();
    }

    /** When {@code riseC} will be reached, counted from when a pan is back at {@link #fellFromC}. */
    public Optional<Arrival> arrivalOnceBack(double riseC) {
        return pan.fell() ? oracle.arrival(riseC, lateness.s()) : Optional.empty();
    }

    /** How fast a pan that has fallen from its boil will warm again once it has its heat back, in °C a minute. */
    public double warmsPerMinC() {
        return Warming.warmsPerMinC(bank.v(), bank.u());
    }

    /** The readings of the last minute were hotter than the pan: what was known before holds until they come back. */
    public void doubtTheLastMinute() {
        pan.doubtTheLastMinute();
    }

    /** The readings jumped: that they lie elsewhere since does not say that the pan stands or cools. */
    public void jumped() {
        pan.stall().jumped();
    }

    /** Whether the readings agree with what is known of the pan. */
    public boolean follows() {
        return pan.begun() && pan.astray().none();
    }

    /** How deep the readings dip again and again because the burner switches off, in °C; 0 where they do not. */
    public double dipsC() {
        return pan.begun() ? pan.cycling().depthC() : 0;
    }

    /** The same, as far as it was seen that they come back from there. */
    public double lastingDipsC() {
        return pan.begun() ? pan.cycling().lastingDepthC() : 0;
    }

    /** Whether the pan has stopped climbing. */
    public boolean still() {
        return pan.begun() && pan.stall().still();
    }

    /** Whether it stands still because it cools. */
    public boolean cools() {
        return pan.begun() && pan.stall().falling();
    }

    /** Whether the readings are far above what the water that left allows: hotter at the base, or a shifted probe. */
    public boolean misledUpwards() {
        return pan.begun() && pan.astray().high();
    }

    /** Where the pan will be in {@code minutes} if water goes on leaving it; to be asked when {@link #knows()}. */
    public Ahead ahead(double minutes) {
        return oracle.ahead(minutes, climbPerMinC());
    }

    /** How far readings of some seconds are usually off, in °C: bubbles, burner and thermometer. */
    public double noiseC() {
        return pan.fineness().sigmaC();
    }

    /** Whether anything is known of the pan. */
    public boolean knows() {
        return pan.begun();
    }

    /** The rise of the pan at {@code t} in °C, the thermometer's lateness made up for. */
    public double riseC(double t) {
        return bank.riseC() + bank.climbPerMinC() * aheadS(t) / 60;
    }

    /** For how many seconds water went on leaving at {@code t} beyond what the points until now show. */
    private double aheadS(double t) {
        return t - pan.lastT() + lateness.s() - pan.cycling().restsS(t);
    }

    /** How far {@link #riseC} may be off at {@code t}, in °C: a standard deviation. */
    public double riseDoubtC(double t) {
        double sinceC = bank.climbPerMinC() * bank.paceDoubt() * (t - pan.lastT()) / 60;
        return Math.sqrt(bank.riseVariance() + sinceC * sinceC);
    }

    /** How fast the pan should be climbing, in °C per minute. */
    public double climbPerMinC() {
        return pan.stall().still() ? pan.stall().climbBefore() : bank.climbPerMinC();
    }

    /** The least pace at which the pan may well be climbing, in °C per minute. */
    public double slowestPerMinC() {
        return pan.stall().countsOn() * climbPerMinC() * Math.max(0, 1 - NINETY_PERCENT * bank.paceDoubt());
    }

    /** How unsure that pace is, as a part of it: a standard deviation. */
    public double paceDoubt() {
        return bank.paceDoubt();
    }

    /** The dissolved solids of a pan that boils {@code riseC} above water, as a fraction by mass. */
    public double solids(double riseC) {
        return curve.solidsAt(riseC);
    }

    /** How fast u = all mass / solids falls, per minute. */
    public double perMinute() {
        return bank.v();
    }
}
