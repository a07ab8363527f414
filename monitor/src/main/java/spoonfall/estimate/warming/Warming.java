package spoonfall.estimate.warming;

import java.util.Optional;

/**
 * What the warming pan tells of the water that will leave: the heat that warmed it by so much a minute will drive off
 * {@code heat / latent heat}. Heat capacity of a sugar solution: 4.187 (1 - 0.57 solids) kJ/(kg K), common practice, no
 * source; latent heat of water near 100 °C 2,257 kJ/kg (IAPWS-IF97).
 *
 * <p>How much heat that is {@link WarmingLine} tells, from what came before the boil slows the pan. One that warms much faster
 * there than it ever did was turned up at the last moment, as once the sugar is dissolved, and has at least the heat of the
 * fastest pace that was seen.
 */
public final class Warming {
    private static final double WATER_KJ_PER_KG_K = 4.187;
    private static final double SUGAR_LESS = 0.57;
    static final double LATENT_KJ_PER_KG = 2257;
    private static final double FORGETS_S = 600;
    private static final int LEAST_SECONDS = 10;

    /** The pan's own metal was warmed as well: so many times the syrup's heat. Common practice, no source. */
    private static final double WITH_THE_PAN = 1.03;

    /** From there on the boil slows it. */
    private static final double NEAR_THE_BOIL_C = -4;

    /** So many times as fast as before is neither noise nor a stir. */
    private static final double TURNED_UP = 1.4;

    /** A burner that switches is no faster there than it was before. */
    private static final double FASTER_THAN_EVER = 1.1;

    /** No knob that dissolves sugar is turned up further; what leaps up is the probe. */
    private static final double MOST_TURNED_UP = 3;

    private static final double TURNED_UP_DOUBT = 0.5;
    private static final double DOUBT = 0.06;

    /** What warmed longer ago has simmered since, and the knob may have been turned. A judgement, no source. */
    private static final double LONG_AGO_DOUBT = 0.5;

    /** Then sugar went in, which was not warmed with the fruit and the water. */
    private static final double LESS_LONG_AGO = 0.85;

    /** After a long way the last degrees tell the less the fewer they are: sugar is poured and melts, and the flame is low. */
    private static final double SHORT_WAY_DOUBT = 0.6;

    /** How far the usual loss may be off, in °C a minute. */
    private static final double LOSS_DOUBT_PER_MIN_C = 0.2;

    /** A burner is late, and a cook who turned it once may have turned it again. */
    private static final double TURN_DOUBT = 0.65;

    private final WarmingLine line = new WarmingLine();
    private double lastT = Double.NEGATIVE_INFINITY;
    private double fastestNearPerMinC;

    /** Takes note of a second in which it stood at {@code riseC} above the water boil (below: negative) and warmed so fast. */
    public void observe(double t, double riseC, double perMinC) {
        if (riseC >= NEAR_THE_BOIL_C) {
            fastestNearPerMinC = Math.max(fastestNearPerMinC, perMinC);
            return;
        }
        fastestNearPerMinC = 0;
        lastT = t;
        line.observe(t, riseC, perMinC);
    }

    private boolean lately(double t) {
        return t - lastT <= FORGETS_S && line.seconds() >= LEAST_SECONDS;
    }

    /** What the warming until {@code t} tells of the boil; nothing unless it warmed for long enough and lately, or a long way before it simmered. */
    Optional<Promise> promise(double t) {
        boolean lately = lately(t);
        double shortOfLong = line.shortOfLong();
        if (lately && shortOfLong == 0) {
            return Optional.of(ofLately(0));
        }
        Optional<Promise> longAgo = ofLongAgo(line.longAgoPerMinC());
        if (!lately) {
            return longAgo;
        }
        return Optional.of(
                longAgo.map(before -> ofLately(SHORT_WAY_DOUBT * shortOfLong).with(before))
                        .orElseGet(() -> ofLately(0)));
    }

    private static Optional<Promise> ofLongAgo(double perMinC) {
        return perMinC > 0
                ? Optional.of(new Promise(LESS_LONG_AGO * vPerU(perMinC), LONG_AGO_DOUBT))
                : Optional.empty();
    }

    private Promise ofLately(double shortWayDoubt) {
        WarmingLine.Heat heat = line.heat();
        boolean turnedUp = turnedUp(heat);
        double perMinC = turnedUp ? Math.min(fastestNearPerMinC, MOST_TURNED_UP * heat.perMinC()) : heat.perMinC();
        double doubt = turnedUp ? TURNED_UP_DOUBT : doubt(heat);
        return new Promise(vPerU(perMinC), Math.hypot(doubt, shortWayDoubt));
    }

    private static double vPerU(double perMinC) {
        return WITH_THE_PAN * WATER_KJ_PER_KG_K * perMinC / LATENT_KJ_PER_KG;
    }

    /**
     * What a pan that warmed so fast will boil away: the more water there was to warm, the more heat it took.
     *
     * @param vPerU how much faster u falls, per minute, where it is larger by one
     * @param doubt the standard deviation of v at a given u, as a part of it
     */
    record Promise(double vPerU, double doubt) {
        /** How fast u will fall, per minute, once the pan boils at {@code u}. */
        double v(double u) {
            return (u - SUGAR_LESS) * vPerU;
        }

        /** The same with what another one says: their mean as logarithms, by how sure they are. */
        Promise with(Promise other) {
            double mine = 1 / (doubt * doubt);
            double others = 1 / (other.doubt * other.doubt);
            double share = others / (mine + others);
            return new Promise(vPerU * Math.pow(other.vPerU / vPerU, share), 1 / Math.sqrt(mine + others));
        }
    }

    /** How fast a pan of which u falls by {@code v} a minute warms where it does not boil, in °C a minute: the same the other way round. */
    public static double warmsPerMinC(double v, double u) {
        return v * LATENT_KJ_PER_KG / (WITH_THE_PAN * WATER_KJ_PER_KG_K * (u - SUGAR_LESS));
    }

    private static double doubt(WarmingLine.Heat heat) {
        double ofLoss = LOSS_DOUBT_PER_MIN_C / heat.perMinC();
        double ofTurn = TURN_DOUBT * heat.turned() * heat.turned();
        double squares = DOUBT * DOUBT + ofLoss * ofLoss + ofTurn * ofTurn + heat.doubt() * heat.doubt();
        return Math.min(TURNED_UP_DOUBT, Math.sqrt(squares));
    }

    /** Whether it was turned up so late that only the last degrees before the boil show it. */
    private boolean turnedUp(WarmingLine.Heat heat) {
        return fastestNearPerMinC > TURNED_UP * heat.perMinC()
                && fastestNearPerMinC > FASTER_THAN_EVER * heat.fastestPerMinC();
    }
}
