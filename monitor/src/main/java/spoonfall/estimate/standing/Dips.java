package spoonfall.estimate.standing;

import spoonfall.estimate.points.RecentPoints;

/**
 * Sets points aside that dip below those before them, until it is seen whether they come back: a stir lowers a reading for some
 * seconds, and says nothing of whether the pan stands. What stays low for longer counts after all. The numbers are judgements, no
 * source.
 */
final class Dips {
    private static final double LASTS_S = 40;
    private static final double LEAST_C = 0.12;
    private static final double SIGMAS = 3;

    /** One step less is no dip. */
    private static final double STEPS = 1.2;

    private static final int BEFORE = 4;
    private static final int MOST = 16;

    private final Standing standing;
    private final boolean byHand;
    private final RecentPoints shown = new RecentPoints();
    private final double[] asideT = new double[MOST];
    private final double[] asideC = new double[MOST];
    private int aside;

    /** {@code standing} is who is shown the points that are none: all of them by hand, since nobody types what a stir has cooled. */
    Dips(Standing standing, boolean byHand) {
        this.standing = standing;
        this.byHand = byHand;
    }

    /** Forgets the way here. */
    void clear() {
        shown.clear();
        aside = 0;
    }

    /** Whether the latest point is set aside. */
    boolean dips() {
        return aside > 0;
    }

    /**
     * Takes a point.
     *
     * @param sigmaC how far neighbouring points usually differ
     * @param stepC the thermometer's step
     */
    void point(double t, double riseC, double sigmaC, double stepC) {
        double lowC = Math.max(LEAST_C, Math.max(SIGMAS * sigmaC, STEPS * stepC));
        boolean dips = riseC < shown.meanC(BEFORE) - lowC; // where nothing is known before it, it does not
        if (byHand || !dips) {
            aside = 0;
            show(t, riseC);
            return;
        }
        asideT[aside] = t;
        asideC[aside] = riseC;
        aside++;
        if (t - asideT[0] >= LASTS_S || aside == MOST) {
            for (int i = 0; i < aside; i++) {
                show(asideT[i], asideC[i]);
            }
            aside = 0;
        }
    }

    private void show(double t, double riseC) {
        shown.add(t, riseC);
        standing.point(t, riseC);
    }
}
