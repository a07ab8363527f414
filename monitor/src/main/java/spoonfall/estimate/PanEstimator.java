package spoonfall.estimate;

import java.util.Arrays;
import java.util.Optional;

/**
 * Follows one boiling pan. It starts itself, learns how noisy the thermometer is, sits out stirs and set tests, begins
 * again where water was added, and says when a rise will be reached, or nothing when it does not know.
 *
 * <p>Times are seconds of the cook and must not run backwards. Not safe for use by several threads.
 */
public final class PanEstimator {
    private final double POINT_EVERY_S = Tun.of("POINT_EVERY_S", 5);

    /** A thermometer is late by so much, more or less; what it shows was so that long ago. */
    private final double LAG_S = Tun.of("LAG_S", 5);

    private final double LEAST_KNOWN_S = Tun.of("LEAST_KNOWN_S", 60);
    private final double DIP_S = Tun.of("DIP_S", 14);
    private final double HIGH_S = Tun.of("HIGH_S", 28);
    private final double AWAY_FORGETS_S = Tun.of("AWAY_FORGETS_S", 75);
    private final double REANCHOR_LOW_S = Tun.of("REANCHOR_LOW_S", 60);
    private final double REANCHOR_HIGH_S = Tun.of("REANCHOR_HIGH_S", 150);
    private final double LOW_GATE_C = Tun.of("LOW_GATE_C", 0.3);
    private final double HIGH_GATE_C = Tun.of("HIGH_GATE_C", 0.45);
    private final double LOW_SIGMAS = Tun.of("LOW_SIGMAS", 3.5);
    private final double HIGH_SIGMAS = Tun.of("HIGH_SIGMAS", 4);
    private final double BACK_SIGMAS = Tun.of("BACK_SIGMAS", 3);
    private final double FALLS_PER_MIN_C = Tun.of("FALLS_PER_MIN_C", -0.15);
    private final double RISES_PER_MIN_C = Tun.of("RISES_PER_MIN_C", 0.6);
    private final double U_DOUBT = Tun.of("U_DOUBT", 1);
    private final double V_DOUBT = Tun.of("V_DOUBT", 0.8);
    private final double LEAST_FIRST_V = Tun.of("LEAST_FIRST_V", 0.02);
    private final double SETS_AT_U = Tun.of("SETS_AT_U", 1.55);
    private final double USUAL_MIN = Tun.of("USUAL_MIN", 28);
    private final double PACE = Tun.of("PACE", 0.8);
    private final double PACE_DOUBT = Tun.of("PACE_DOUBT", 0.5);
    private final double SCALE_DOUBT = Tun.of("SCALE_DOUBT", 0.06);
    private final double PROBE_DOUBT_C = Tun.of("PROBE_DOUBT_C", 0.12);
    private final double BASE_SIGMA = Tun.of("BASE_SIGMA", 0.6);

    private final SyrupCurve curve;
    private final double baseSigmaC;
    private final FilterBank bank;
    private final Oracle oracle;
    private NoiseMeter noise = new NoiseMeter();
    private double[] bucket = new double[64];
    private double bucketTimes;
    private int inBucket;
    private double bucketSinceT = Double.NEGATIVE_INFINITY;
    private boolean begun;
    private double beganT;
    private double lastT;
    private double lastC;
    private double stepC;
    private double lowSinceT = Double.NaN;
    private double highSinceT = Double.NaN;
    private boolean away;
    private int back;
    private final double[] recentT = new double[16];
    private final double[] recentC = new double[16];
    private int recent;

    /**
     * An estimator that knows nothing yet.
     *
     * @param pressurePa air pressure at the pan
     * @param baseDoubtC how far the water boil may be off, in °C
     */
    public PanEstimator(double pressurePa, double baseDoubtC) {
        curve = new SyrupCurve(pressurePa);
        baseSigmaC = Math.hypot(BASE_SIGMA * baseDoubtC, PROBE_DOUBT_C);
        bank = new FilterBank(curve);
        oracle = new Oracle(curve, bank);
    }

    /** Takes a reading that tells something of the pan, as the rise above the water boil in °C. */
    public void accept(double t, double riseC) {
        if (inBucket == 0) {
            bucketSinceT = t;
            bucketTimes = 0;
        }
        if (inBucket == bucket.length) {
            bucket = Arrays.copyOf(bucket, 2 * inBucket);
        }
        bucket[inBucket++] = riseC;
        bucketTimes += t;
    }

    /**
     * Ends a second.
     *
     * @param follow whether the pan boils or stands off the heat after a boil; else everything is forgotten
     * @param settled whether it has boiled long enough for the thermometer to have arrived
     * @param thermometerStepC smallest step that the thermometer has shown
     */
    public void endSecond(double t, boolean follow, boolean settled, double thermometerStepC) {
        stepC = Math.min(1, thermometerStepC);
        if (!follow) {
            forget();
            return;
        }
        if (inBucket > 0 && t - bucketSinceT >= POINT_EVERY_S) {
            double pointT = bucketTimes / inBucket;
            double pointC = middle();
            inBucket = 0;
            if (begun) {
                point(pointT, pointC);
            } else if (settled) {
                begin(pointT, pointC);
            }
        }
    }

    /** Forgets the way here. */
    public void forget() {
        begun = false;
        inBucket = 0;
        recent = 0;
    }

    /** When {@code riseC} will be reached, counted from {@code t}; empty when that would be a guess. */
    public Optional<Arrival> arrival(double t, double riseC) {
        boolean lost = away && t - sinceAway() > AWAY_FORGETS_S;
        if (!begun || lost || t - beganT < LEAST_KNOWN_S) {
            return Optional.empty();
        }
        return oracle.arrival(riseC, t - lastT + LAG_S);
    }

    /** Whether the readings agree with what is known of the pan. */
    public boolean follows() {
        return begun && !away && Double.isNaN(lowSinceT) && Double.isNaN(highSinceT);
    }

    /** Whether anything is known of the pan. */
    public boolean knows() {
        return begun;
    }

    /** The rise of the pan at {@code t} in °C, the thermometer's lateness made up for. */
    public double riseC(double t) {
        return bank.riseC() + bank.climbPerMinC() * (t - lastT + LAG_S) / 60;
    }

    /** How fast the pan should be climbing, in °C per minute. */
    public double climbPerMinC() {
        return bank.climbPerMinC();
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
        lastC = riseC;
        away = false;
        lowSinceT = Double.NaN;
        highSinceT = Double.NaN;
        noise = new NoiseMeter();
        double u = curve.u(riseC / Inverting.firstScale());
        double v = Math.max(LEAST_FIRST_V, (u - SETS_AT_U) / USUAL_MIN);
        bank.begin(
                new double[] {u, v, 0, Inverting.firstScale(), PACE},
                new double[] {U_DOUBT, V_DOUBT * v, baseSigmaC, SCALE_DOUBT, PACE_DOUBT});
        bank.update(riseC, noise.variance(stepC));
    }

    private void point(double t, double riseC) {
        double minutes = Math.max(0, t - lastT) / 60;
        boolean frozen = away && !Double.isNaN(lowSinceT);
        if (!frozen) {
            bank.predict(minutes);
        }
        lastT = t;
        lastC = riseC;
        remember(t, riseC);
        double expectedVariance = bank.riseVariance();
        double off = riseC - bank.riseC();
        double sigma = Math.sqrt(expectedVariance + noise.variance(stepC));
        if (away) {
            whileAway(t, riseC, off, sigma);
            return;
        }
        boolean low = off < -Math.max(LOW_GATE_C, LOW_SIGMAS * sigma);
        boolean high = off > Math.max(HIGH_GATE_C, HIGH_SIGMAS * sigma);
        lowSinceT = low ? Double.isNaN(lowSinceT) ? t : lowSinceT : Double.NaN;
        highSinceT = high ? Double.isNaN(highSinceT) ? t : highSinceT : Double.NaN;
        if (low || high) {
            away = low ? t - lowSinceT >= DIP_S : t - highSinceT >= HIGH_S;
            back = 0;
            return;
        }
        noise.observe(off, expectedVariance);
        bank.update(riseC, noise.variance(stepC));
    }

    private void whileAway(double t, double riseC, double off, double sigma) {
        boolean low = !Double.isNaN(lowSinceT);
        boolean near = Math.abs(off) < Math.max(LOW_GATE_C, BACK_SIGMAS * sigma);
        back = near ? back + 1 : 0;
        double awayS = t - sinceAway();
        if (back >= 2) {
            if (low) {
                bank.rest(awayS / 60);
            }
            resume();
            bank.update(riseC, noise.variance(stepC));
            return;
        }
        double perMinC = recentPerMinC(t);
        boolean levelled = perMinC > FALLS_PER_MIN_C && perMinC < RISES_PER_MIN_C + 2 * bank.climbPerMinC();
        if (levelled && awayS >= (low ? REANCHOR_LOW_S : REANCHOR_HIGH_S)) {
            bank.reanchor(riseC, noise.variance(stepC));
            resume();
        }
    }

    private void resume() {
        away = false;
        lowSinceT = Double.NaN;
        highSinceT = Double.NaN;
    }

    private void remember(double t, double riseC) {
        recentT[recent % recentT.length] = t;
        recentC[recent % recentC.length] = riseC;
        recent++;
    }

    /** The slope of the last minute's points. */
    private double recentPerMinC(double t) {
        double n = 0;
        double sumT = 0;
        double sumC = 0;
        double sumTT = 0;
        double sumTC = 0;
        for (int i = 0; i < Math.min(recent, recentT.length); i++) {
            double x = recentT[i] - t;
            if (x >= -60) {
                n++;
                sumT += x;
                sumC += recentC[i];
                sumTT += x * x;
                sumTC += x * recentC[i];
            }
        }
        double spread = n * sumTT - sumT * sumT;
        return spread <= 0 ? 0 : 60 * (n * sumTC - sumT * sumC) / spread;
    }

    /** The mean of the middle half of the bucket. */
    private double middle() {
        Arrays.sort(bucket, 0, inBucket);
        int cut = inBucket / 4;
        double sum = 0;
        for (int i = cut; i < inBucket - cut; i++) {
            sum += bucket[i];
        }
        return sum / (inBucket - 2 * cut);
    }
}
