package spoonfall.cook;

/**
 * Readings that climb faster than water could leave are not the pan's: until a while after it, the pan is taken to be no higher
 * than it was due by what was known two minutes before, for a base that catches drags along what is known. The numbers are
 * judgements, no source.
 */
final class TooFast {
    /** What is known after a break must have met some readings again. */
    private static final double SETTLE_S = 25;

    /** So far above where it was due the reading must lie: less is noise. */
    private static final double ABOVE_C = 0.4;

    /** Out of a burner's pause or a stir it climbs as fast, but only back to where it was. */
    private static final double NEW_HEIGHTS_C = 0.3;

    private static final double ABOVE_SIGMAS = 4;

    /** So long the reading takes to come down to the pan. */
    private static final double COOLS_S = 120;

    /** What has climbed for so long is the pan after all, or was told to be none. */
    private static final double MOST_S = 360;

    /** While the boil is younger than that the readings still climb from the way up to it. */
    private static final double BOILS_S = 60;

    /** The heat may have been turned up a little, and the curve be another one. */
    private static final double TIMES = 1.5;

    private final Foreseen foreseen;
    private final Track growths = new Track(2 * Foreseen.KNOWN_S);
    private double fastT = Double.NEGATIVE_INFINITY;
    private double beganT;
    private double dueT;
    private double heightC;
    private double perMinC;
    private double growsPerMin;
    private double aboveC;

    /** {@code waterBoilC} is where plain water boils. */
    TooFast(double waterBoilC) {
        foreseen = new Foreseen(waterBoilC);
    }

    /** Forgets the way here, at {@code t}. */
    void restart(double t) {
        foreseen.forget();
        foreseen.waitUntil(t + SETTLE_S);
        fastT = Double.NEGATIVE_INFINITY;
    }

    /**
     * How high the pan can be at most, in °C; to be asked once a second.
     *
     * @param boilingForS for how many seconds it has been boiling
     * @param noticesS so many seconds ahead of where it is
     */
    double atMostC(Signals now, double boilingForS, double noticesS, Forecaster forecaster) {
        double t = now.t();
        boolean held = t - fastT < COOLS_S;
        if (boilingForS == 0 || (held && t - beganT > MOST_S)) {
            restart(t);
            return Double.POSITIVE_INFINITY;
        }
        boolean fast = boilingForS > BOILS_S && forecaster.climbsTooFast(now);
        if (fast && !held) {
            lookBack(t);
        }
        double dueC = fast || held ? dueC(t + noticesS) : Double.POSITIVE_INFINITY;
        if (fast && now.levelC() - now.knownStepC() > Math.max(dueC + aboveC, now.earlierPeakC() + NEW_HEIGHTS_C)) {
            beganT = held ? beganT : t;
            fastT = t;
            return dueC;
        }
        if (held) {
            return dueC;
        }
        if (foreseen.remember(t, forecaster)) {
            growths.add(t, forecaster.growsPerMin());
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Where it is due, by what was looked back at. */
    private double dueC(double t) {
        double minutes = Math.max(0, t - dueT) / 60;
        return heightC + TIMES * perMinC * minutes * Steepening.times(growsPerMin * minutes);
    }

    private void lookBack(double t) {
        double knownT = Math.max(t - Foreseen.KNOWN_S, foreseen.oldestT().orElse(t));
        dueT = knownT + Foreseen.KNOWN_S;
        heightC = foreseen.heightC(knownT).orElse(Double.POSITIVE_INFINITY);
        perMinC = foreseen.climbPerMinC(knownT).orElse(0);
        growsPerMin = Math.max(0, growths.valueAt(knownT).orElse(0));
        aboveC = Math.max(ABOVE_C, ABOVE_SIGMAS * foreseen.noiseC(knownT));
    }
}
