package spoonfall.cook.watch;

import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.forecast.Foreseen;
import spoonfall.cook.signal.Signals;
import spoonfall.series.Steepening;
import spoonfall.series.Track;

/**
 * Readings that climb faster than water could leave are not the pan's: until a while after it, the pan is taken to be no higher
 * than it was due by what was known two minutes before, for a base that catches drags along what is known. The numbers
 * are judgements, no source.
 */
public final class TooFast {
    /** What is known after a break must have met some readings again. */
    private static final double SETTLE_S = 25;

    /** So far above where it was due the reading must lie: less is noise. */
    private static final double ABOVE_C = 0.4;

    /** Out of a burner's pause or a stir it climbs as fast, but only back to where it was. */
    private static final double NEW_HEIGHTS_C = 0.3;

    private static final double ABOVE_SIGMAS = 4;

    /** So long the reading takes to come down to the pan. */
    private static final double COOLS_S = 120;

    /** So far above where it was due, and ever was, it does not lie by what was not known of the pan's heat. */
    private static final double JUMPS_C = 1;

    /** For so long it must have been watched since the readings broke off, before what was due then is believed against what stays. */
    private static final double KNOWN_FOR_S = 90;

    /** What has climbed for so long is the pan after all, or was told to be none. */
    private static final double MOST_S = 360;

    /** While the boil is younger than that the readings still climb from the way up to it. */
    private static final double BOILS_S = 60;

    /** What goes on climbing as it warmed, or nearly, past the boil of water is thick, and boils where it slackens. */
    private static final double SLACKENS_PART = 0.8;

    private static final double LEVEL_PER_MIN_C = 0.5;

    /** The heat may have been turned up a little, and the curve be another one. */
    private static final double TIMES = 1.5;

    private final Foreseen foreseen;
    private final Track growths = new Track(2 * Foreseen.KNOWN_S);
    private double fastT = Double.NEGATIVE_INFINITY;
    private double highT = Double.NEGATIVE_INFINITY;
    private boolean everBrokeOff;
    private double warmsPerMinC;
    private double slackenedC = Double.NaN;
    private boolean known;
    private double peakC;
    private double latestDueC;
    private double beganT;
    private double dueT;
    private double heightC;
    private double perMinC;
    private double growsPerMin;
    private double aboveC;

    /** {@code waterBoilC} is where plain water boils. */
    public TooFast(double waterBoilC) {
        foreseen = new Foreseen(waterBoilC);
    }

    /** Forgets the way here, at {@code t}. */
    public void restart(double t) {
        everBrokeOff = true;
        begin(t);
    }

    private void begin(double t) {
        foreseen.forget();
        foreseen.waitUntil(t + SETTLE_S);
        fastT = Double.NEGATIVE_INFINITY;
        highT = Double.NEGATIVE_INFINITY;
    }

    /**
     * How high the pan can be at most, in °C; to be asked once a second.
     *
     * @param boilingForS for how many seconds it has been boiling
     * @param noticesS so many seconds ahead of where it is
     */
    public double atMostC(Signals now, double boilingForS, double noticesS, Forecaster forecaster) {
        double t = now.t();
        boolean held = t - fastT < COOLS_S;
        boolean high = t - highT < COOLS_S;
        slacken(now, boilingForS);
        if (boilingForS == 0 || (held && t - beganT > MOST_S)) {
            everBrokeOff |= foreseen.oldestT().isPresent();
            begin(t);
            return Double.POSITIVE_INFINITY;
        }
        boolean fast = boilingForS > BOILS_S && forecaster.climbsTooFast(now);
        if (fast && !held) {
            lookBack(t);
        }
        double dueC = fast || held || high ? dueC(t + noticesS) : Double.POSITIVE_INFINITY;
        double surelyC = now.levelC() - now.knownStepC();
        if (fast && surelyC > Math.max(dueC + aboveC, now.earlierPeakC() + NEW_HEIGHTS_C)) {
            beganT = held ? beganT : t;
            peakC = held ? peakC : now.earlierPeakC();
            fastT = t;
            return dueC;
        }
        if (held || high) {
            stay(t, surelyC, dueC);
        }
        if (held) {
            return dueC;
        }
        if (foreseen.remember(t, forecaster)) {
            growths.add(t, forecaster.growsPerMin());
        }
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Whether the reading still lies so far above where the pan is due that it cannot be at {@code gelC} yet; to be asked after
     * {@link #atMostC}. Of a pan of which little is known yet what is due says nothing, but that it climbs as no water could.
     */
    public boolean staysHigh(double t, double gelC) {
        return t == highT && (!known || latestDueC < gelC);
    }

    /** Takes note of where it no longer climbed as it had warmed. */
    private void slacken(Signals now, double boilingForS) {
        if (boilingForS == 0) {
            slackenedC = Double.NaN;
            warmsPerMinC = now.quick().map(Signals::perMinute).orElse(0.0);
        } else if (Double.isNaN(slackenedC)) {
            double slackPerMinC = Math.max(LEVEL_PER_MIN_C, SLACKENS_PART * warmsPerMinC);
            boolean slackens = now.quick()
                    .filter(line -> Signals.perMinute(line) < slackPerMinC)
                    .isPresent();
            slackenedC = slackens ? now.levelC() : slackenedC;
        }
    }

    /** Takes note of whether what climbed too fast in its first boil is still up there: a thick one is on its way up until it slackens. */
    private void stay(double t, double surelyC, double dueC) {
        boolean jumped = Math.min(surelyC - dueC, surelyC - peakC) >= JUMPS_C && surelyC - slackenedC > JUMPS_C;
        if (jumped && !everBrokeOff && t - beganT <= MOST_S) {
            latestDueC = dueC;
            highT = t;
        }
    }

    /** Where it is due, by what was looked back at. */
    private double dueC(double t) {
        double minutes = Math.max(0, t - dueT) / 60;
        return heightC + TIMES * perMinC * minutes * Steepening.times(growsPerMin * minutes);
    }

    private void lookBack(double t) {
        double oldestT = foreseen.oldestT().orElse(t);
        known = oldestT <= t - KNOWN_FOR_S;
        double knownT = Math.max(t - Foreseen.KNOWN_S, oldestT);
        dueT = knownT + Foreseen.KNOWN_S;
        heightC = foreseen.heightC(knownT).orElse(Double.POSITIVE_INFINITY);
        perMinC = foreseen.climbPerMinC(knownT).orElse(0);
        growsPerMin = Math.max(0, growths.valueAt(knownT).orElse(0));
        aboveC = Math.max(ABOVE_C, ABOVE_SIGMAS * foreseen.noiseC(knownT));
    }
}
