package spoonfall.estimate;

import java.util.Optional;

/**
 * Follows one boiling pan. It starts itself, learns how noisy the thermometer is, sits out stirs and set tests, begins
 * again where water was added, and says when a rise will be reached, or nothing when it does not know.
 *
 * <p>Times are seconds of the cook and must not run backwards. Not safe for use by several threads.
 */
public final class PanEstimator {
    private static final double LEAST_KNOWN_S = 30;
    private static final double DIP_S = 14;
    private static final double HIGH_S = 28;
    private static final double AWAY_FORGETS_S = 75;
    private static final double REANCHOR_LOW_S = 60;
    private static final double REANCHOR_HIGH_S = 150;
    private static final double LOW_GATE_C = 0.3;
    private static final double HIGH_GATE_C = 0.45;
    private static final double LOW_SIGMAS = 3.5;
    private static final double HIGH_SIGMAS = 4;
    private static final double BACK_SIGMAS = 3;
    private static final double NEAR_C = 0.12;
    private static final double NEAR_SIGMAS = 1.3;
    private static final double FALLS_PER_MIN_C = -0.15;
    private static final double RISES_PER_MIN_C = 0.6;
    private static final double IMPOSSIBLE_PER_MIN_C = 0.5;
    private static final double IMPOSSIBLE_TIMES = 2.5;
    private static final double HOLD_S = 900;
    private static final double PACE = 0.6;
    private static final double PACE_DOUBT = 0.4;
    private static final double SCALE_DOUBT = 0.06;
    private static final double PROBE_DOUBT_C = 0.12;
    private static final double BASE_SIGMA = 0.6;

    /** What is read by hand is off by that much beside its rounding, in °C: stirs, bubbles, a slanting eye. */
    private static final double BY_HAND_C = 0.2;

    /** A mark more or less says little: it takes so many times the steps until a standstill is one. */
    private static final double BY_HAND_STEPS = 2;

    private final boolean byHand;
    private final SyrupCurve curve;
    private final double baseSigmaC;
    private final FilterBank bank;
    private final Oracle oracle;
    private final Points points = new Points();
    private final StallWatch stall = new StallWatch();
    private final Remembered remembered;
    private final Sawtooth sawtooth = new Sawtooth();
    private final Warming warming = new Warming();
    private final Lateness lateness = new Lateness();
    private Optional<PanPrior> plan = Optional.empty();
    private NoiseMeter noise = new NoiseMeter();
    private boolean begun;
    private boolean warmed;
    private double beganT;
    private double lastT;
    private double stepC;
    private double lowSinceT = Double.NaN;
    private double highSinceT = Double.NaN;
    private boolean away;
    private boolean offTheHeat;
    private boolean impossible;
    private int back;

    /**
     * An estimator that knows nothing yet.
     *
     * @param pressurePa air pressure at the pan
     * @param baseDoubtC how far the water boil may be off, in °C
     */
    public PanEstimator(double pressurePa, double baseDoubtC) {
        this(pressurePa, baseDoubtC, false);
    }

    /**
     * An estimator that knows nothing yet.
     *
     * @param pressurePa air pressure at the pan
     * @param baseDoubtC how far the water boil may be off, in °C
     * @param byHand whether readings are minutes apart, each to the nearest mark of a scale
     */
    public PanEstimator(double pressurePa, double baseDoubtC, boolean byHand) {
        this.byHand = byHand;
        curve = new SyrupCurve(pressurePa);
        baseSigmaC = Math.hypot(BASE_SIGMA * baseDoubtC, PROBE_DOUBT_C);
        bank = new FilterBank(curve);
        oracle = new Oracle(curve, bank, byHand);
        remembered = new Remembered(curve);
    }

    /** Takes what a plan says of the pan, for when it begins to boil. */
    public void expect(PanPrior prior) {
        plan = Optional.of(prior);
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
     * @param perMinC in °C per minute
     */
    public void warms(double t, double perMinC) {
        warming.observe(t, perMinC);
    }

    /**
     * Ends a second.
     *
     * @param follow whether the pan boils or stands off the heat after a boil; else everything is forgotten
     * @param settled whether it has boiled long enough for the thermometer to have arrived
     * @param cooling whether the pan stands off the heat, so that low readings are no noise
     * @param thermometerStepC smallest step that the thermometer has shown
     */
    public void endSecond(double t, boolean follow, boolean settled, boolean cooling, double thermometerStepC) {
        stepC = Math.min(1, thermometerStepC);
        if (offTheHeat && !cooling) {
            stall.begin(); // nothing left it meanwhile
        }
        offTheHeat = cooling;
        lateness.endSecond(t, follow);
        if (!follow) {
            forget();
            return;
        }
        if (points.due(t)) {
            points.take();
            if (begun) {
                point(points.latestT(), points.latestC());
            } else if (settled) {
                begin(points.latestT(), points.latestC());
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
        stall.begin();
        begun = false;
        points.clear();
    }

    /** When {@code riseC} will be reached, counted from {@code t}; empty when that would be a guess. */
    public Optional<Arrival> arrival(double t, double riseC) {
        boolean lost = away && t - sinceAway() > AWAY_FORGETS_S;
        if (!begun || lost || t - beganT < (warmed ? 0 : LEAST_KNOWN_S)) {
            return Optional.empty();
        }
        return oracle.arrival(riseC, t - lastT + lateness.s());
    }

    /** The readings of the last minute were hotter than the pan: what was known before holds until they come back. */
    public void doubtTheLastMinute() {
        boolean doubted = away && !Double.isNaN(highSinceT);
        if (!begun || !(doubted || remembered.restore(lastT, bank))) {
            return;
        }
        highSinceT = doubted ? highSinceT : lastT;
        lowSinceT = Double.NaN;
        away = true;
        impossible = true;
        back = 0;
    }

    /** Whether the readings agree with what is known of the pan. */
    public boolean follows() {
        return begun && !away && Double.isNaN(lowSinceT) && Double.isNaN(highSinceT);
    }

    /** How deep the readings dip again and again because the burner switches off, in °C; 0 where they do not. */
    public double dipsC() {
        return begun && !byHand ? sawtooth.depthC() : 0;
    }

    /** Whether the pan has stopped climbing. */
    public boolean still() {
        return begun && stall.still();
    }

    /** Whether it stands still because it cools. */
    public boolean cools() {
        return begun && stall.falling();
    }

    /** Whether the readings are far above what the water that left allows: hotter at the base, or a shifted probe. */
    public boolean misledUpwards() {
        return begun && !Double.isNaN(highSinceT);
    }

    /** Where the pan will be in {@code minutes} if water goes on leaving it; to be asked when {@link #knows()}. */
    public Ahead ahead(double minutes) {
        double u = bank.u();
        double steepens = curve.riseSlopeC(u - Math.max(0, bank.v()) * minutes) / curve.riseSlopeC(u);
        double climbs = climbPerMinC();
        return new Ahead(bank.riseC() + minutes * climbs * (1 + steepens) / 2, climbs * steepens);
    }

    /** How far readings of some seconds are usually off, in °C: bubbles, burner and thermometer. */
    public double noiseC() {
        return noise.sigmaC();
    }

    /** Whether anything is known of the pan. */
    public boolean knows() {
        return begun;
    }

    /** The rise of the pan at {@code t} in °C, the thermometer's lateness made up for. */
    public double riseC(double t) {
        return bank.riseC() + bank.climbPerMinC() * (t - lastT + lateness.s()) / 60;
    }

    /** How fast the pan should be climbing, in °C per minute. */
    public double climbPerMinC() {
        return stall.still() ? stall.climbBefore() : bank.climbPerMinC();
    }

    /** How fast u = all mass / solids falls, per minute. */
    public double perMinute() {
        return bank.v();
    }

    private double sinceAway() {
        return Double.isNaN(lowSinceT) ? highSinceT : lowSinceT;
    }

    private void begin(double t, double riseC) {
        if (riseC < 0.25) {
            return;
        }
        begun = true;
        beganT = t;
        lastT = t;
        resume();
        noise = new NoiseMeter();
        stall.begin();
        remembered.forget();
        sawtooth.forget();
        double u = curve.u(riseC / Inverting.firstScale());
        double readDoubtC = Math.hypot(baseSigmaC, SCALE_DOUBT * riseC);
        FirstGuess read = FirstGuess.of(u, warming, t);
        FirstGuess guess = read.with(plan, readDoubtC / -curve.riseSlopeC(u));
        warmed = warming.known(t) || !guess.equals(read);
        bank.begin(
                new double[] {guess.u(), guess.v(), 0, Inverting.firstScale(), PACE},
                new double[] {guess.uDoubt(), guess.vDoubt(), baseSigmaC, SCALE_DOUBT, PACE_DOUBT});
        believe(riseC);
    }

    private void point(double t, double riseC) {
        double minutes = Math.max(0, t - lastT) / 60;
        boolean frozen = away && !Double.isNaN(lowSinceT);
        if (!frozen) {
            bank.predict(minutes);
        }
        lastT = t;
        noise.pass(riseC);
        sawtooth.point(t, riseC, bank.climbPerMinC());
        if (!byHand && !away && sawtooth.dips()) {
            lowSinceT = Double.NaN;
            return;
        }
        followStall(t, riseC);
        double expectedVariance = bank.riseVariance();
        double off = riseC - bank.riseC();
        double sigma = Math.sqrt(expectedVariance + noise.variance(stepC));
        if (away) {
            whileAway(t, riseC, off, sigma);
            return;
        }
        boolean low = off < -(offTheHeat ? LOW_GATE_C : Math.max(LOW_GATE_C, LOW_SIGMAS * sigma));
        boolean high = off > Math.max(HIGH_GATE_C, HIGH_SIGMAS * sigma);
        lowSinceT = low ? Double.isNaN(lowSinceT) ? t : lowSinceT : Double.NaN;
        highSinceT = high ? Double.isNaN(highSinceT) ? t : highSinceT : Double.NaN;
        if (low || high) {
            away = low ? t - lowSinceT >= DIP_S : t - highSinceT >= HIGH_S;
            back = 0;
            if (high
                    && points.slopePerMinC() > Math.max(IMPOSSIBLE_PER_MIN_C, IMPOSSIBLE_TIMES * bank.climbPerMinC())) {
                impossible = true;
            }
            return;
        }
        if (!byHand) {
            noise.observe(off, expectedVariance, stepC);
        }
        believe(riseC);
        remembered.follow(t, bank);
    }

    private void believe(double riseC) {
        if (byHand) {
            bank.updateWithin(riseC, stepC / 2, BY_HAND_C * BY_HAND_C);
        } else {
            bank.update(riseC, noise.variance(stepC));
        }
    }

    private void followStall(double t, double riseC) {
        double lowForS = Double.isNaN(lowSinceT) ? 0 : Math.max(0.1, t - lowSinceT);
        boolean stood = stall.still();
        stall.point(t, riseC, bank, noise.variance(stepC), byHand ? BY_HAND_STEPS * stepC : stepC, lowForS);
        if (stood && !stall.still() && !stall.fell()) {
            bank.goOn(riseC, noise.variance(stepC), stall.climbBefore());
            resume();
        }
    }

    private void whileAway(double t, double riseC, double off, double sigma) {
        boolean low = !Double.isNaN(lowSinceT);
        // From below it comes back with the boil; from above it creeps back, and is not back before it is there.
        double gateC = low ? Math.max(LOW_GATE_C, BACK_SIGMAS * sigma) : Math.max(NEAR_C, NEAR_SIGMAS * sigma);
        boolean near = Math.abs(off) < gateC;
        back = near ? back + 1 : 0;
        double awayS = t - sinceAway();
        if (back >= 2) {
            if (low) {
                bank.rest(awayS / 60);
            }
            resume();
            believe(riseC);
            return;
        }
        double perMinC = points.slopePerMinC();
        boolean held = impossible && awayS < HOLD_S;
        boolean levelled = !held && perMinC > FALLS_PER_MIN_C && perMinC < RISES_PER_MIN_C + 2 * bank.climbPerMinC();
        if (levelled && !stall.suspects() && awayS >= (low ? REANCHOR_LOW_S : REANCHOR_HIGH_S)) {
            bank.reanchor(riseC, noise.variance(stepC));
            resume();
        }
    }

    private void resume() {
        stall.lookAfresh();
        impossible = false;
        away = false;
        lowSinceT = Double.NaN;
        highSinceT = Double.NaN;
    }
}
