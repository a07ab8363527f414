package spoonfall.estimate;

/**
 * Tells whether water still leaves a pan at the pace at which it left until a moment ago. Of every such moment it remembers
 * where the pan was and how fast it climbed, and fits to the readings since then what part of that pace is left, with the
 * doubt of that: a line through points of known noise whose beginning is known to the filter (a linear regression with a
 * prior on its intercept, from any textbook). The moment is not known, so all are tried.
 */
final class Standing {
    /** What is left of the pace where nothing but a lid's or a low flame's rest leaves. */
    static final double STANDS = 0.06;

    /** What is left of it where the heat was only turned down. */
    static final double CLIMBS = 0.55;

    /** The logarithm of how many times likelier a standstill must be. */
    static final double SURE = 4.5;

    /** The same for a pan that only may be standing: a little more than even. */
    private static final double MAYBE = 0.25;

    private static final double EVERY_S = 15;
    private static final int KEPT = 64;
    private static final double LEAST_S = 60;
    private static final double LEAST_CLIMB_PER_MIN_C = 0.01;

    /** No pan is steadier than that, however fine its thermometer: burners cycle, and cooks stir. */
    private static final double UNSTEADY_C = 0.04;

    /** A burner that switches makes a pan climb in flights of stairs of so many minutes. */
    private static final double FLIGHTS_MIN = 0.3;

    private static final double LEVEL_C = 0.02;
    private static final double EDGES = 2;

    /** A reading that climbs in steps is behind or ahead by such a part of one, and stays so for a while. */
    private static final double STEP_PART = 0.2;

    /** Without a flicker to fill the steps two heights are each anywhere within one: 1/√12, twice. */
    private static final double BARE_STEP_PART = 0.41;

    /** Curves of syrups steepen otherwise than ours by such a part over some minutes. */
    private static final double CURVE_DOUBT = 0.1;

    /** The latest readings must lie on the way of a pan that stands, rather than on that of one that goes on. */
    private static final double LATEST = 0.5;

    private final double[] sinceT = new double[KEPT];
    private final double[] sinceC = new double[KEPT];
    private final double[] waterPerSC = new double[KEPT];
    private final double[] otherPerSC = new double[KEPT];

    /** What is known of where the pan was then, as so many points would tell it. */
    private final double[] levelPoints = new double[KEPT];

    private final double[] variance = new double[KEPT];
    private final double[] edge = new double[KEPT];
    private final double[] paceVariance = new double[KEPT];
    private final double[] n = new double[KEPT];
    private final double[] sumX = new double[KEPT];
    private final double[] sumY = new double[KEPT];
    private final double[] sumXx = new double[KEPT];
    private final double[] sumXy = new double[KEPT];
    private int taken;
    private boolean maybe;
    private double lastC = Double.NaN;

    /** Forgets the way here. */
    void clear() {
        taken = 0;
        maybe = false;
        lastC = Double.NaN;
    }

    /** Whether it is time to remember where the pan is. */
    boolean remembersAt(double t) {
        return taken == 0 || t - sinceT[(taken - 1) % KEPT] >= EVERY_S;
    }

    /**
     * Remembers where the pan is.
     *
     * @param riseC where it is
     * @param riseVariance the doubt of that, in °C²
     * @param byWaterPerMinC how fast it climbs for the water that leaves
     * @param paceDoubt the doubt of that, as a part of it
     * @param otherwisePerMinC how fast it climbs besides, for the sugar that acid inverts
     * @param pointVariance the noise of one point, in °C²
     */
    void remember(
            double t,
            double riseC,
            double riseVariance,
            double byWaterPerMinC,
            double paceDoubt,
            double otherwisePerMinC,
            double pointVariance) {
        int i = taken++ % KEPT;
        sinceT[i] = t;
        sinceC[i] = riseC;
        waterPerSC[i] = byWaterPerMinC / 60;
        otherPerSC[i] = otherwisePerMinC / 60;
        paceVariance[i] = CLIMBS * CLIMBS * (paceDoubt * paceDoubt + CURVE_DOUBT * CURVE_DOUBT);
        double flights = FLIGHTS_MIN * byWaterPerMinC;
        variance[i] = pointVariance + UNSTEADY_C * UNSTEADY_C + flights * flights;
        levelPoints[i] = variance[i] / (riseVariance + LEVEL_C * LEVEL_C);
        edge[i] = EDGES * Math.sqrt(variance[i]);
        n[i] = 0;
        sumX[i] = 0;
        sumY[i] = 0;
        sumXx[i] = 0;
        sumXy[i] = 0;
    }

    /** Whether it is likelier that the pan stands since some moment than that it goes on, though not by enough to say so. */
    boolean maybe() {
        return maybe;
    }

    /** Takes a point; one outside what any pan would show counts as at the edge of that. */
    void point(double t, double riseC) {
        maybe = false;
        for (int i = 0; i < Math.min(taken, KEPT); i++) {
            double s = t - sinceT[i];
            double edgeC = edge[i];
            double x = waterPerSC[i] * s;
            double y = Math.max(-edgeC, Math.min(x + edgeC, riseC - sinceC[i] - otherPerSC[i] * s));
            n[i]++;
            sumX[i] += x;
            sumY[i] += y;
            sumXx[i] += x * x;
            sumXy[i] += x * y;
        }
        lastC = Double.isNaN(lastC) ? riseC : (lastC + riseC) / 2;
    }

    /**
     * The newest moment since which the pan stands still, or -1.
     *
     * @param knownSinceT moments before that are not to be trusted
     * @param stepC the thermometer's step
     * @param bare whether the readings do not flicker between its steps
     * @param lowestC moments at which the pan was higher than that do not count
     */
    int since(double t, double knownSinceT, double stepC, boolean bare, double lowestC) {
        double doubtC = (bare ? BARE_STEP_PART : STEP_PART) * stepC;
        for (int back = 1; back <= Math.min(taken, KEPT); back++) {
            int i = (taken - back) % KEPT;
            if (sinceT[i] < knownSinceT) {
                return -1;
            }
            boolean known = t - sinceT[i] >= LEAST_S && climbPerMinC(i) >= LEAST_CLIMB_PER_MIN_C;
            if (known && lowestC >= sinceC[i]) {
                double likelier = standsLikelier(i, t, doubtC);
                maybe |= likelier >= MAYBE;
                if (likelier >= SURE) {
                    return i;
                }
            }
        }
        return -1;
    }

    /** Where the pan was at the latest moment not after {@code t}, as the rise in °C; far above it all if none is known. */
    double riseCAt(double t) {
        for (int back = 1; back <= Math.min(taken, KEPT); back++) {
            int i = (taken - back) % KEPT;
            if (sinceT[i] <= t) {
                return sinceC[i];
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** How fast the pan climbed then, in °C a minute, for the water that left. */
    double climbPerMinC(int moment) {
        return 60 * waterPerSC[moment];
    }

    /** The logarithm of how many times likelier it is that the pan stands since that moment than that it goes on. */
    private double standsLikelier(int i, double t, double stepDoubtC) {
        double s = t - sinceT[i];
        double due = waterPerSC[i] * s;
        if (lastC - sinceC[i] - otherPerSC[i] * s > LATEST * due) {
            return Double.NEGATIVE_INFINITY;
        }
        double levels = n[i] + levelPoints[i];
        double determinant = levels * sumXx[i] - sumX[i] * sumX[i];
        double parts = levels * sumXy[i] - sumX[i] * sumY[i];
        if (!(parts < (CLIMBS + STANDS) / 2 * determinant)) {
            return Double.NEGATIVE_INFINITY; // as most do: what goes on is likelier
        }
        double part = parts / determinant;
        double steps = stepDoubtC / due;
        double partVariance = variance[i] * levels / determinant + steps * steps + paceVariance[i];
        return (CLIMBS - STANDS) * (CLIMBS + STANDS - 2 * part) / (2 * partVariance);
    }
}
