package spoonfall.estimate.standing;

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
    static final double CLIMBS = 0.45;

    /** The logarithm of how many times likelier a standstill must be. */
    static final double SURE = 4;

    private static final double EVERY_S = 15;
    private static final int KEPT = 64;
    private static final double LEAST_S = 60;

    /** That it may be standing is told sooner. */
    private static final double MAYBE_LEAST_S = 30;

    private static final double LEAST_CLIMB_PER_MIN_C = 0.01;

    /** No pan is steadier than that, however fine its thermometer: burners cycle, and cooks stir. */
    private static final double UNSTEADY_C = 0.04;

    /** A burner that switches makes a pan climb in flights of stairs of so many minutes. */
    private static final double FLIGHTS_MIN = 0.3;

    private static final double LEVEL_C = 0.02;
    private static final double EDGES = 2;

    /** A reading that climbs in steps is behind or ahead by such a part of one, and stays so for a while. */
    private static final double STEP_PART = 0.12;

    /** Without a flicker to fill the steps it is twice as much. */
    private static final double BARE_STEP_PART = 0.25;

    /** Curves of syrups steepen otherwise than ours by such a part over some minutes. */
    private static final double CURVE_DOUBT = 0.1;

    private final double[] sinceT = new double[KEPT];
    private final double[] sinceC = new double[KEPT];
    private final double[] waterPerMinC = new double[KEPT];
    private final double[] steepens = new double[KEPT];
    private final double[] otherPerMinC = new double[KEPT];

    /** What is known of where the pan was then, as so many points would tell it. */
    private final double[] levelPoints = new double[KEPT];

    private final double[] variance = new double[KEPT];
    private final double[] edge = new double[KEPT];
    private final double[] doubts = new double[KEPT];
    private final double[] n = new double[KEPT];
    private final double[] sumX = new double[KEPT];
    private final double[] sumY = new double[KEPT];
    private final double[] sumXx = new double[KEPT];
    private final double[] sumXy = new double[KEPT];
    private final double latelyS;
    private int taken;
    private boolean maybe;

    /** No moment of more than {@code latelyS} seconds ago is asked. */
    Standing(double latelyS) {
        this.latelyS = latelyS;
    }

    /** Forgets the way here. */
    void clear() {
        taken = 0;
        maybe = false;
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
     * @param steepensPerMin by what part of itself that climb grows in a minute
     * @param otherwisePerMinC how fast it climbs besides, for the sugar that acid inverts
     * @param pointVariance the noise of one point, in °C²
     */
    void remember(
            double t,
            double riseC,
            double riseVariance,
            double byWaterPerMinC,
            double paceDoubt,
            double steepensPerMin,
            double otherwisePerMinC,
            double pointVariance) {
        int i = taken++ % KEPT;
        sinceT[i] = t;
        sinceC[i] = riseC;
        waterPerMinC[i] = byWaterPerMinC;
        steepens[i] = steepensPerMin;
        otherPerMinC[i] = otherwisePerMinC;
        doubts[i] = paceDoubt;
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

    /** Whether it is at least as likely that the pan stands since some moment as that it goes on, though not by enough to say so. */
    boolean maybe() {
        return maybe;
    }

    /** Takes a point; one outside what any pan would show counts as at the edge of that. */
    void point(double t, double riseC) {
        for (int back = 1; back <= Math.min(taken, KEPT); back++) {
            int i = (taken - back) % KEPT;
            if (t - sinceT[i] > latelyS) {
                break; // nor are those before it asked again
            }
            double minutes = (t - sinceT[i]) / 60;
            double edgeC = edge[i];
            double x = dueC(i, minutes);
            double y = Math.max(-edgeC, Math.min(x + edgeC, riseC - sinceC[i] - otherPerMinC[i] * minutes));
            n[i]++;
            sumX[i] += x;
            sumY[i] += y;
            sumXx[i] += x * x;
            sumXy[i] += x * y;
        }
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
        maybe = false;
        double doubtC = (bare ? BARE_STEP_PART : STEP_PART) * stepC;
        for (int back = 1; back <= Math.min(taken, KEPT); back++) {
            int i = (taken - back) % KEPT;
            double sinceS = t - sinceT[i];
            if (sinceT[i] < knownSinceT || sinceS > latelyS) {
                return -1;
            }
            if (sinceS >= MAYBE_LEAST_S && waterPerMinC[i] >= LEAST_CLIMB_PER_MIN_C && lowestC >= sinceC[i]) {
                double likelier = standsLikelier(i, t, doubtC);
                maybe |= likelier >= 0;
                if (sinceS >= LEAST_S && likelier >= SURE) {
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
        return waterPerMinC[moment];
    }

    /** How far the pan that it was climbs in so many minutes by the water that leaves. */
    private double dueC(int i, double minutes) {
        return waterPerMinC[i] * minutes * (1 + steepens[i] * minutes / 2);
    }

    /** How many times as much of that climb as of its pace is in doubt: what leaves too fast steepens too fast. */
    private double doubtGrows(int i, double minutes) {
        double grown = steepens[i] * minutes / 2;
        return 1 + grown / (1 + grown);
    }

    /** The logarithm of how many times likelier it is that the pan stands since that moment than that it goes on. */
    private double standsLikelier(int i, double t, double stepDoubtC) {
        double levels = n[i] + levelPoints[i];
        double determinant = levels * sumXx[i] - sumX[i] * sumX[i];
        double parts = levels * sumXy[i] - sumX[i] * sumY[i];
        if (!(parts < (CLIMBS + STANDS) / 2 * determinant)) {
            return Double.NEGATIVE_INFINITY; // as most do: what goes on is likelier
        }
        double part = parts / determinant;
        double minutes = (t - sinceT[i]) / 60;
        double steps = stepDoubtC / dueC(i, minutes);
        double paceDoubt = CLIMBS * Math.hypot(CURVE_DOUBT, doubts[i] * doubtGrows(i, minutes));
        double partVariance = variance[i] * levels / determinant + steps * steps + paceDoubt * paceDoubt;
        return (CLIMBS - STANDS) * (CLIMBS + STANDS - 2 * part) / (2 * partVariance);
    }
}
