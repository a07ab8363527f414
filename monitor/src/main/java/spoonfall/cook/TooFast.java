package spoonfall.cook;

import java.util.OptionalDouble;

/**
 * Readings that climb faster than water could leave are not the pan's: until a while after it, the pan is taken to be no higher
 * than it was due by what was known two minutes before, for a base that catches drags along what is known. The numbers are
 * judgements, no source.
 */
final class TooFast {
    /** What was known so long ago the climb has not touched yet. */
    private static final double KNOWN_S = 120;

    private static final double EVERY_S = 5;

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

    private static final double LEAST_GROWTH = 1e-3;

    private final double waterBoilC;
    private final Track heights = new Track(2 * KNOWN_S);
    private final Track climbs = new Track(2 * KNOWN_S);
    private final Track growths = new Track(2 * KNOWN_S);
    private final Track noises = new Track(2 * KNOWN_S);
    private double lastPointT = Double.NEGATIVE_INFINITY;
    private double fastT = Double.NEGATIVE_INFINITY;
    private double beganT;
    private double dueT;
    private double heightC;
    private double perMinC;
    private double growsPerMin;
    private double aboveC;

    /** {@code waterBoilC} is where plain water boils. */
    TooFast(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Forgets the way here, at {@code t}. */
    void restart(double t) {
        lastPointT = t + SETTLE_S;
        heights.clear();
        climbs.clear();
        growths.clear();
        noises.clear();
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
        remember(t, forecaster);
        return Double.POSITIVE_INFINITY;
    }

    /** Where it is due, by what was looked back at. */
    private double dueC(double t) {
        double minutes = Math.max(0, t - dueT) / 60;
        double grown = growsPerMin * minutes;
        return heightC + TIMES * perMinC * minutes * (grown < LEAST_GROWTH ? 1 : Math.expm1(grown) / grown);
    }

    private void remember(double t, Forecaster forecaster) {
        if (t - lastPointT < EVERY_S) {
            return;
        }
        lastPointT = t;
        forecaster.ahead(KNOWN_S / 60).ifPresent(due -> {
            heights.add(t, waterBoilC + due.riseC());
            climbs.add(t, due.climbPerMinC());
            growths.add(t, forecaster.growsPerMin());
            noises.add(t, forecaster.noiseC());
        });
    }

    private void lookBack(double t) {
        OptionalDouble oldestT = heights.oldestT();
        double knownT = Math.max(t - KNOWN_S, oldestT.orElse(t));
        dueT = knownT + KNOWN_S;
        heightC = heights.valueAt(knownT).orElse(Double.POSITIVE_INFINITY);
        perMinC = climbs.valueAt(knownT).orElse(0);
        growsPerMin = Math.max(0, growths.valueAt(knownT).orElse(0));
        aboveC = Math.max(ABOVE_C, ABOVE_SIGMAS * noises.valueAt(knownT).orElse(0));
    }
}
