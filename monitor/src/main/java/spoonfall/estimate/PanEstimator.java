package spoonfall.estimate;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Follows one boiling pan. It starts itself, learns how noisy the thermometer is, sits out stirs and set tests, begins
 * again where water was added, and says when a rise will be reached, or nothing when it does not know.
 *
 * <p>Times are seconds of the cook and must not run backwards. Not safe for use by several threads.
 */
public final class PanEstimator {
    /** Nine in ten are above so many standard deviations below. */
    private static final double NINETY_PERCENT = 1.28;

    /** A pan that turns out to boil so much higher between its dips was not begun where it boils. */
    private static final double HIGHER_C = 0.45;

    private final boolean byHand;
    private final FilterBank bank;
    private final Oracle oracle;
    private final Points points = new Points();
    private final StallWatch stall;
    private final Hindsight hindsight;
    private final Cycling cycling = new Cycling();
    private final Lateness lateness = new Lateness();
    private final Beginning beginning;
    private final LastBoil lastBoil = new LastBoil();
    private final SyrupCurve curve;
    private final Fineness fineness;
    private final Astray astray = new Astray();
    private final WarmedByHand warmed = new WarmedByHand();
    private final SitOut sitOut;
    private boolean begun;
    private double lastT;
    private boolean offTheHeat;

    /**
     * An estimator that knows nothing yet.
     *
     * @param pressurePa air pressure at the pan
     * @param baseDoubtC how far the water boil may be off, in °C
     * @param byHand whether readings are minutes apart, each to the nearest mark of a scale
     */
    public PanEstimator(double pressurePa, double baseDoubtC, boolean byHand) {
        this.byHand = byHand;
        stall = new StallWatch(byHand);
        curve = new SyrupCurve(pressurePa);
        beginning = new Beginning(curve, baseDoubtC);
        fineness = new Fineness(byHand);
        bank = new FilterBank(curve);
        sitOut = new SitOut(curve, bank, astray, points, fineness);
        hindsight = new Hindsight(curve);
        oracle = new Oracle(curve, bank, hindsight.record(), byHand);
    }

    /** Takes what a plan says of the pan, for when it begins to boil. */
    public void expect(PanPrior prior) {
        beginning.expect(prior);
    }

    /** Takes a reading that tells something of the pan, as the rise above the water boil in °C. */
    public void accept(double t, double riseC) {
        if (!byHand) {
            lateness.accept(t, riseC);
        }
        points.accept(t, riseC);
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
        beginning.warming().observe(t, warmedC, perMinC);
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
        fineness.step(thermometerStepC);
        if (offTheHeat && !cooling) {
            stall.begin(); // nothing left it meanwhile
        }
        offTheHeat = cooling;
        lateness.endSecond(t, follow);
        if (!follow) {
            forget();
            return;
        }
        if (points.take(t)) {
            boolean arrived = (!begun || beginning.tooSoon())
                    && settled
                    && !points.warms(beginning.warming().fastestPerMinC(t));
            if (begun && !arrived) {
                point(points.latestT(), points.latestC());
            } else if (arrived || (!byHand && !cooling)) {
                begin(points.latestT(), points.latestC(), arrived);
            }
        }
    }

    /** What was read lately tells nothing of the pan, which boils on: what is known of it is kept. */
    public void skip() {
        points.clear();
        stall.begin();
    }

    /**
     * The pan stands off the heat, or is not yet back at the boil: no water leaves, and what was read lately tells nothing of
     * it. To be called every second instead of {@link #endSecond} for as long as that lasts.
     */
    public void pause(double t) {
        skip();
        if (begun) {
            lastT = t;
            resume();
        }
    }

    /** Forgets the way here. */
    public void forget() {
        if (begun) {
            lastBoil.ends(lastT, stall);
        }
        skip();
        begun = false;
    }

    /** When {@code riseC} will be reached, counted from {@code t}; empty when that would be a guess. */
    public Optional<Arrival> arrival(double t, double riseC) {
        if (!begun || astray.lost(t) || !beginning.ripe(t)) {
            return Optional.empty();
        }
        return oracle.arrival(riseC, aheadS(t));
    }

    /** The rise in °C at which a pan boiled that has fallen from there, until it is back; empty for others. */
    public OptionalDouble fellFromC() {
        boolean fell = begun ? astray.away() && astray.low() : lastBoil.knows(bank);
        return fell ? OptionalDouble.of(bank.riseC()) : OptionalDouble.empty();
    }

    /** When {@code riseC} will be reached, counted from when a pan is back at {@link #fellFromC}. */
    public Optional<Arrival> arrivalOnceBack(double riseC) {
        return fellFromC().isPresent() ? oracle.arrival(riseC, lateness.s()) : Optional.empty();
    }

    /** How fast a pan that has fallen from its boil will warm again once it has its heat back, in °C a minute. */
    public double warmsPerMinC() {
        return Warming.warmsPerMinC(bank.v(), bank.u());
    }

    /** The readings of the last minute were hotter than the pan: what was known before holds until they come back. */
    public void doubtTheLastMinute() {
        if (begun && (hindsight.restore(lastT, bank) || astray.misledUpwards())) {
            astray.doubt(lastT);
        }
    }

    /** The readings jumped: that they lie elsewhere since does not say that the pan stands or cools. */
    public void jumped() {
        stall.jumped();
    }

    /** Whether the readings agree with what is known of the pan. */
    public boolean follows() {
        return begun && astray.none();
    }

    /** How deep the readings dip again and again because the burner switches off, in °C; 0 where they do not. */
    public double dipsC() {
        return begun ? cycling.depthC() : 0;
    }

    /** The same, as far as it was seen that they come back from there. */
    public double lastingDipsC() {
        return begun ? cycling.lastingDepthC() : 0;
    }

    /** Whether the pan has stopped climbing. */
    public boolean still() {
        return begun && stall.still();
    }

    /** Nothing was made of the readings until {@code t}, which stayed the same; but they went on from there, and so it was the pan that stood. */
    public void stood(double t) {
        stall.stood(t);
    }

    /** Whether it stands still because it cools. */
    public boolean cools() {
        return begun && stall.falling();
    }

    /** Whether the readings are far above what the water that left allows: hotter at the base, or a shifted probe. */
    public boolean misledUpwards() {
        return begun && astray.high();
    }

    /** Where the pan will be in {@code minutes} if water goes on leaving it; to be asked when {@link #knows()}. */
    public Ahead ahead(double minutes) {
        return oracle.ahead(minutes, climbPerMinC());
    }

    /** How far readings of some seconds are usually off, in °C: bubbles, burner and thermometer. */
    public double noiseC() {
        return fineness.sigmaC();
    }

    /** Whether anything is known of the pan. */
    public boolean knows() {
        return begun;
    }

    /** The rise of the pan at {@code t} in °C, the thermometer's lateness made up for. */
    public double riseC(double t) {
        return bank.riseC() + bank.climbPerMinC() * aheadS(t) / 60;
    }

    /** For how many seconds water went on leaving at {@code t} beyond what the points until now show. */
    private double aheadS(double t) {
        return t - lastT + lateness.s() - cycling.restsS(t);
    }

    /** How far {@link #riseC} may be off at {@code t}, in °C: a standard deviation. */
    public double riseDoubtC(double t) {
        double sinceC = bank.climbPerMinC() * bank.paceDoubt() * (t - lastT) / 60;
        return Math.sqrt(bank.riseVariance() + sinceC * sinceC);
    }

    /** How fast the pan should be climbing, in °C per minute. */
    public double climbPerMinC() {
        return stall.still() ? stall.climbBefore() : bank.climbPerMinC();
    }

    /** The least pace at which the pan may well be climbing, in °C per minute. */
    public double slowestPerMinC() {
        return stall.countsOn() * climbPerMinC() * Math.max(0, 1 - NINETY_PERCENT * bank.paceDoubt());
    }

    /** The dissolved solids of a pan that boils {@code riseC} above water, as a fraction by mass. */
    public double solids(double riseC) {
        return curve.solidsAt(riseC);
    }

    /** How fast u = all mass / solids falls, per minute. */
    public double perMinute() {
        return bank.v();
    }

    private void begin(double t, double riseC, boolean arrived) {
        if (lastBoil.knows(bank) && (!arrived || lastBoil.comesBack(riseC, points, bank))) {
            return; // that is worth more than what a creeping thermometer says
        }
        if (!lastBoil.goOn(t, riseC, fineness.variance(), bank)) {
            begun = beginning.begin(t, riseC, arrived, bank);
            if (!begun) {
                return;
            }
            lastBoil.begins(t);
            fineness.begin();
        }
        begun = true;
        lastT = t;
        resume();
        stall.begin();
        hindsight.begin();
        cycling.forget();
        fineness.believe(bank, points);
    }

    private void point(double t, double riseC) {
        double minutes = Math.max(0, t - lastT) / 60;
        boolean frozen = astray.away() && astray.low();
        if (!frozen) {
            bank.predict(minutes);
        }
        lastT = t;
        sitOut.point(t, riseC);
        if (!byHand && cycling.point(t, riseC, bank.climbPerMinC())) {
            fineness.begin(); // until now the dips were taken for noise, and for a pan that does not climb
            stall.begin();
            if (cycling.topC() > bank.riseC() + HIGHER_C) {
                bank.reanchor(cycling.topC(), fineness.variance());
                resume();
            }
        }
        if (!astray.away() && cycling.dips()) {
            astray.notLow();
            return;
        }
        fineness.pass(riseC);
        followStall(t, riseC);
        double expectedVariance = bank.riseVariance();
        double offC = riseC - bank.riseC();
        double sigmaC = Math.sqrt(expectedVariance + fineness.variance());
        if (astray.away()) {
            whileAway(t, riseC, offC, sigmaC);
        } else if (!astray.look(t, offC, sigmaC, offTheHeat, points, bank.climbPerMinC())) {
            fineness.observe(offC, expectedVariance);
            fineness.believe(bank, points);
            hindsight.follow(t, bank);
        }
    }

    private void followStall(double t, double riseC) {
        boolean stood = stall.still();
        stall.point(t, riseC, bank, fineness.variance(), fineness.stepsC(), astray.lowForS(t));
        if (stood && !stall.still() && !stall.fell()) {
            bank.goOn(riseC, fineness.variance(), stall.climbBefore());
            resume();
        }
    }

    private void whileAway(double t, double riseC, double offC, double sigmaC) {
        switch (sitOut.end(t, riseC, offC, sigmaC, stall.suspects())) {
            case BACK -> resume();
            case ANOTHER_PAN -> forget();
            case AWAY -> {}
        }
    }

    private void resume() {
        stall.lookAfresh();
        hindsight.breakOff();
        astray.end();
    }
}
