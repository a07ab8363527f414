package spoonfall.estimate.standing;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.points.RecentPoints;
import spoonfall.series.Colour;
import spoonfall.series.Jitter;
import spoonfall.series.LineSums;

/**
 * Tells a pan that has stopped climbing from one that only seems to. It remembers where the pan was and how fast it
 * climbed; when the readings since then have climbed by less than a quarter of that, by more than chance makes of so noisy
 * a thermometer, the pan stands still. A dilute pan hardly climbs, so nothing is ever certain enough there.
 */
public final class StallWatch {
    /** So long after it began to boil, or to boil elsewhere, the pace is what was seen, and no longer what was expected or jumped to. */
    private static final double KNOWN_S = 150;

    /** What was known of the pace before a test still is, as soon as the readings have settled. */
    private static final double BACK_S = 45;

    /** A pan that comes back from a test is looked at afresh more than once, within so long. */
    private static final double SOON_S = 30;

    private static final double AGAIN_PART = 0.5;
    private static final double AGAIN_S = 75;

    /** What surely climbs by so large a part of its pace climbs again, however little it has risen: slow pans take minutes to rise. */
    private static final double SURELY_AGAIN_PART = 0.6;

    private static final double SURELY_ERRORS = 3;
    /** What has risen by so much is no noise. */
    private static final double RISEN_C = 0.15;

    private static final double RISEN_SIGMAS = 3;

    /** What has been low for so long, and cools over both of these, stands. */
    private static final double FALLING_S = 85;

    private static final double COOLS_OVER_S = 35;
    private static final double COOLS_OVER_LONGER_S = 55;

    /** What jumped down cools only if it goes lower still. */
    private static final double GOES_LOWER_C = 0.5;

    /** No stir takes a pan that far down. */
    private static final double DEEP_C = 1;

    /** Of a pan of which nothing was seen for so long it is not known what it did meanwhile. */
    private static final double UNSEEN_S = 25;

    /** For so long it must have been seen since, before it is said to stand. */
    private static final double SEEN_S = 60;

    /** What was known longer ago says little of the pace: heat drifts, and no curve is known so far. By hand it takes as long to know anything. */
    private static final double LATELY_S = 600;

    private static final double BEFORE_S = 60;
    private static final double DROP_C = 0.25;
    private static final double DROP_SIGMAS = 2.5;

    /** What a pan does by and by is taken for noise too; neighbours that differ are the thermometer's alone. */
    private static final double JITTERS = 2;

    private static final double COOLS_PER_MIN_C = -0.1;

    /** What falls that fast does not stand: it may be tested, and where to is seen soon. */
    private static final double FALLS_PER_MIN_C = -0.25;

    private static final double FALLS_OVER_S = 45;

    /** Neighbouring points are alike; over minutes they tell more than a filter may make of them one by one. */
    private static final double OVER_MINUTES = 0.3;

    /** So large a part of neighbouring points must be the same for the thermometer's steps to be bare. */
    private static final double BARE_SHARE = 0.6;

    /** So much of its pace is counted on while it is as likely to stand as to climb. */
    private static final double MAYBE_PART = 0.2;

    private final double unseenS;
    private final RecentPoints points = new RecentPoints();
    private final Jitter jitter = new Jitter();
    private final Colour colour = new Colour();
    private final Standing standing;
    private final Dips dips;
    private final HeatBack heat = new HeatBack();
    private final Climbed climbed = new Climbed();
    private double followedSinceT = Double.NaN;
    private double backT = Double.NEGATIVE_INFINITY;
    private double deepC;
    private double sinceT;
    private double seenT = Double.NEGATIVE_INFINITY;
    private double seenSinceT = Double.NEGATIVE_INFINITY;
    private boolean still;
    private boolean stoppedByFalling;
    private boolean belowItsWay;
    private boolean heatBack;
    private double climbBefore;
    private double stillC;
    private double jumpedToC = Double.NaN;

    /** {@code byHand} says whether readings are minutes apart. */
    public StallWatch(boolean byHand) {
        unseenS = byHand ? Double.POSITIVE_INFINITY : UNSEEN_S;
        standing = new Standing(byHand ? Double.POSITIVE_INFINITY : LATELY_S);
        dips = new Dips(standing, byHand);
    }

    /** What was learnt of the pan's usual heat was another one's; to be followed by {@link #begin}. */
    public void anotherPan() {
        heat.begin();
        climbed.begin();
    }

    /** Begins afresh, with what came before forgotten. */
    public void begin() {
        still = false;
        points.clear();
        lookAfresh();
    }

    /** What comes does not go on from where the pan was, as after a set test. */
    public void lookAfresh() {
        backT = deepC >= DEEP_C ? seenT : backT;
        standing.clear();
        dips.clear();
        deepC = 0;
        followedSinceT = Double.NaN;
    }

    /** The readings jumped, and lie elsewhere now. */
    public void jumped() {
        lookAfresh();
        jumpedToC = points.isEmpty() ? Double.NaN : points.latestC();
    }

    /** Whether the pan stands still. */
    public boolean still() {
        return still;
    }

    /** Whether it stands still because it cools, rather than at one height. */
    public boolean falling() {
        return still && stoppedByFalling;
    }

    /** Whether it cooled when it was seen to stand last, so that it comes back to where it was. */
    public boolean stoppedByFalling() {
        return stoppedByFalling;
    }

    /** What part of its pace can be counted on: nothing if it stands, little if it is as likely to stand as to climb. */
    public double countsOn() {
        double climbing = standing.maybe() ? MAYBE_PART : 1;
        return still ? 0 : climbing;
    }

    /** Whether the heat came back to a pan that had lost it without being known to stand: it climbs by {@link #climbBefore} again. */
    public boolean heatBack() {
        return heatBack;
    }

    /** How fast it climbed before it stood still, in °C a minute. */
    public double climbBefore() {
        return climbBefore;
    }

    /**
     * Takes a point.
     *
     * @param bank what is known of the pan
     * @param variance of one point, in °C²
     * @param stepC the thermometer's step
     * @param lowForS how long the readings have been far below what they should be; 0 if they are not
     */
    public void point(double t, double riseC, FilterBank bank, double variance, double stepC, double lowForS) {
        double minutes = points.isEmpty() ? 0 : (t - points.latestT()) / 60;
        see(t, riseC);
        climbed.observe(t, bank.riseC());
        heatBack = false;
        if (still) {
            seeWhetherItClimbs(t, riseC, variance, lowForS);
        } else if (coolsForLong(t, riseC, bank, lowForS)) {
            stop(riseC, bank.climbPerMinC(), true);
        } else {
            dips.point(t, riseC, jitter.sigmaC(), stepC);
            seeWhetherItFalls(t, riseC, bank, variance, lowForS);
            if (lowForS == 0) {
                seeWhetherHeatIsBack(t, riseC, minutes, bank);
                remember(t, riseC, bank, variance);
            }
            if (lowForS == 0 || !belowItsWay) { // what cools, or what something cold went into, is another matter
                seeWhetherItStands(t, riseC, bank, variance, stepC);
            }
        }
    }

    private void see(double t, double riseC) {
        seenSinceT = t - seenT > unseenS ? t : seenSinceT;
        seenT = t;
        jitter.observe(riseC);
        sinceT = points.isEmpty() ? t : sinceT;
        points.add(t, riseC);
    }

    private boolean coolsForLong(double t, double riseC, FilterBank bank, double lowForS) {
        double seenLowForS = Math.min(lowForS, t - sinceT); // whatever was so while nothing was read
        jumpedToC = lowForS > 0 ? jumpedToC : Double.NaN;
        boolean whereItJumpedTo = !Double.isNaN(jumpedToC) && riseC > jumpedToC - GOES_LOWER_C;
        return seenLowForS >= FALLING_S
                && riseC < bank.riseC()
                && !whereItJumpedTo
                && cools(t, COOLS_OVER_S)
                && cools(t, COOLS_OVER_LONGER_S);
    }

    private void seeWhetherItFalls(double t, double riseC, FilterBank bank, double variance, double lowForS) {
        deepC = lowForS > 0 ? Math.max(deepC, bank.riseC() - riseC) : deepC;
        if (lowForS == 0 && deepC >= DEEP_C) {
            lookAfresh(); // it comes back from a test: what it did there says nothing of its climb
        }
        belowItsWay =
                lowForS > 0 && (belowItsWay || riseC < standing.riseCAt(t - lowForS - BEFORE_S) - dropC(variance));
    }

    private void remember(double t, double riseC, FilterBank bank, double variance) {
        followedSinceT = Double.isNaN(followedSinceT) ? t : followedSinceT;
        if (dips.dips()) {
            return;
        }
        colour.observe(riseC - bank.riseC());
        if (standing.remembersAt(t)) {
            standing.remember(
                    t,
                    bank.riseC(),
                    bank.riseVariance(),
                    bank.climbPerMinC(),
                    bank.paceDoubt(),
                    bank.steepensPerMin(),
                    bank.inversionPerMinC(),
                    OVER_MINUTES * variance * colour.times());
        }
    }

    private void seeWhetherItStands(double t, double riseC, FilterBank bank, double variance, double stepC) {
        if (dips.dips() || !climbed.surely(bank.riseC()) || points.slopePerMinC(t, FALLS_OVER_S) < FALLS_PER_MIN_C) {
            return;
        }
        double knownT = followedSinceT + (followedSinceT - backT <= SOON_S ? BACK_S : KNOWN_S);
        boolean bare = points.mostlySame(BARE_SHARE);
        int since = standing.since(t, knownT, stepC, bare, riseC + dropC(variance));
        if (since >= 0 && t - seenSinceT >= SEEN_S) {
            stop(riseC, standing.climbPerMinC(since), false);
        }
    }

    private boolean cools(double t, double forS) {
        return points.slopePerMinC(t, forS) < COOLS_PER_MIN_C;
    }

    /** Less than this below where it was is no fall, for a thermometer of which the estimator says that it is so noisy. */
    private double dropC(double variance) {
        return Math.max(DROP_C, DROP_SIGMAS * Math.min(Math.sqrt(variance), JITTERS * jitter.sigmaC()));
    }

    private void stop(double riseC, double climbPerMinC, boolean cools) {
        still = true;
        stoppedByFalling = cools;
        climbBefore = climbPerMinC;
        stillC = riseC;
        lookAfresh();
    }

    private void seeWhetherItClimbs(double t, double riseC, double variance, double lowForS) {
        stillC = Math.min(stillC, riseC);
        double climbs = points.slopePerMinC(t, AGAIN_S);
        double risenC = Math.max(RISEN_C, RISEN_SIGMAS * Math.sqrt(variance));
        boolean risen = riseC - stillC > risenC || (lowForS == 0 && stoppedByFalling);
        double surely = stoppedByFalling
                ? Double.NEGATIVE_INFINITY
                : points.line(t, KNOWN_S).leastSlope(SURELY_ERRORS);
        if ((risen && climbs >= AGAIN_PART * climbBefore) || surely >= SURELY_AGAIN_PART * climbBefore) {
            still = false;
        }
    }

    private void seeWhetherHeatIsBack(double t, double riseC, double minutes, FilterBank bank) {
        heat.observe(t, minutes, bank);
        double lostForS = heat.lostForS(t);
        if (lostForS > 0
                && (climbsAgain(t, Math.min(AGAIN_S, lostForS), bank)
                        || climbsAgain(t, Math.min(KNOWN_S, lostForS), bank))) {
            heatComesBack(bank.climbPerMinC(heat.usualV()));
        } else if (heat.mayOutrun(riseC, bank) && !points.mostlySame(BARE_SHARE)) {
            LineSums line = points.line(t, KNOWN_S);
            if (heat.outruns(line, bank)) {
                heatComesBack(line.slope());
            }
        }
    }

    private void heatComesBack(double climbPerMinC) {
        heatBack = true;
        climbBefore = climbPerMinC;
        lookAfresh();
    }

    private boolean climbsAgain(double t, double forS, FilterBank bank) {
        return heat.back(points.line(t, forS), bank);
    }
}
