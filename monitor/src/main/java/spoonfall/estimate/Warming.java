package spoonfall.estimate;

import java.util.OptionalDouble;

/**
 * What the warming pan tells of the water that will leave: the heat that warmed it by so much a minute will drive off
 * {@code heat / latent heat}. Heat capacity of a sugar solution: 4.187 (1 - 0.57 solids) kJ/(kg K), common practice, no
 * source; latent heat of water near 100 °C 2,257 kJ/kg (IAPWS-IF97).
 *
 * <p>Part of the heat leaves as steam before the pan boils: it warms the slower the hotter it gets. That vapour grows by e
 * in some {@link #VAPOUR_GROWS_C}, so that the pace by which the climb slackens tells how much heat it takes already. A pan
 * that warms faster and faster was turned up meanwhile: there its last pace counts. Just below the boil a pan is slowed by it;
 * one that warms much faster there than it did before was turned up at the last moment, as once the sugar is dissolved, and has at
 * least the heat of the fastest pace that was seen.
 */
final class Warming {
    private static final double WATER_KJ_PER_KG_K = 4.187;
    private static final double SUGAR_LESS = 0.57;
    private static final double LATENT_KJ_PER_KG = 2257;
    private static final double LEAST_PER_MIN_C = 0.5;
    private static final double FORGETS_S = 600;
    private static final int LEAST_SECONDS = 10;

    /** Water's vapour pressure grows by e in about 27 °C there; what air carries off grows faster than that. */
    private static final double VAPOUR_GROWS_C = 20;

    private static final double MOST_SLACKENING = 0.04;

    /** A pace that was seen for a few degrees only says little of how it changes: so many °C² of evidence for no change. */
    private static final double STEADY_C2 = 1.33;

    private static final double STEADY_SECONDS = 45;

    /** From there on the boil slows it. */
    private static final double NEAR_THE_BOIL_C = -4;

    /** So many times as fast as before is neither noise nor a stir. */
    private static final double TURNED_UP = 1.4;

    /** No knob that dissolves sugar is turned up further; what leaps up is the probe. */
    private static final double MOST_TURNED_UP = 3;

    private static final double TURNED_UP_DOUBT = 0.5;
    private static final double DOUBT = 0.12;
    private static final double CHANGE_DOUBT = 0.5;

    private int count;
    private double lastT = Double.NEGATIVE_INFINITY;
    private double lastC;
    private double sumC;
    private double sumPace;
    private double sumCc;
    private double sumCpace;
    private double fastestNearPerMinC;

    /** Takes note of a second in which it stood at {@code riseC} above the water boil (below: negative) and warmed so fast. */
    void observe(double t, double riseC, double perMinC) {
        if (riseC >= NEAR_THE_BOIL_C) {
            fastestNearPerMinC = Math.max(fastestNearPerMinC, perMinC);
            return;
        }
        fastestNearPerMinC = 0;
        if (t - lastT > FORGETS_S || perMinC < LEAST_PER_MIN_C) {
            count = 0;
            sumC = 0;
            sumPace = 0;
            sumCc = 0;
            sumCpace = 0;
        }
        lastT = t;
        if (perMinC >= LEAST_PER_MIN_C) {
            count++;
            lastC = riseC;
            sumC += riseC;
            sumPace += perMinC;
            sumCc += riseC * riseC;
            sumCpace += riseC * perMinC;
        }
    }

    boolean known(double t) {
        return count >= LEAST_SECONDS && t - lastT <= FORGETS_S;
    }

    /** How fast it warmed, in °C a minute; empty where that is not known. */
    OptionalDouble perMinC(double t) {
        return known(t) ? OptionalDouble.of(heatPerMinC()) : OptionalDouble.empty();
    }

    /** How fast u will fall, per minute, once the pan boils at {@code u}: the more water there was to warm, the more heat it took. */
    double v(double u) {
        return (u - SUGAR_LESS) * vPerU();
    }

    /** How much faster that is where u is larger by one. */
    double vPerU() {
        return WATER_KJ_PER_KG_K * heatPerMinC() / LATENT_KJ_PER_KG;
    }

    /** How fast a pan of which u falls by {@code v} a minute warms where it does not boil, in °C a minute: the same the other way round. */
    static double perMinC(double v, double u) {
        return v * LATENT_KJ_PER_KG / (WATER_KJ_PER_KG_K * (u - SUGAR_LESS));
    }

    /** The standard deviation of v at a given u as a part of it. */
    double doubt() {
        if (turnedUp()) {
            return TURNED_UP_DOUBT;
        }
        return Math.hypot(DOUBT, CHANGE_DOUBT * VAPOUR_GROWS_C * Math.abs(change()) * count / sumPace);
    }

    /** Whether it was turned up so late that only the last degrees before the boil show it. */
    private boolean turnedUp() {
        return fastestNearPerMinC > TURNED_UP * heatBeforePerMinC();
    }

    /** How fast it would warm if all heat went into it, in °C a minute. */
    private double heatPerMinC() {
        return turnedUp() ? Math.min(fastestNearPerMinC, MOST_TURNED_UP * heatBeforePerMinC()) : heatBeforePerMinC();
    }

    /** The same by what was seen before it came near the boil. */
    private double heatBeforePerMinC() {
        double pace = sumPace / count;
        double change = change();
        if (change > 0) {
            return pace + change * (lastC - sumC / count);
        }
        return pace + VAPOUR_GROWS_C * Math.min(-change, MOST_SLACKENING * pace);
    }

    /** How the pace changes with each °C, in °C a minute. */
    private double change() {
        double spread = sumCc - sumC * sumC / count;
        double both = sumCpace - sumC * sumPace / count;
        return both / (spread + STEADY_C2 * Math.max(STEADY_SECONDS, count));
    }
}
