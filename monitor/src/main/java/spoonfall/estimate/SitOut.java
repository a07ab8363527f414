package spoonfall.estimate;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.SyrupCurve;
import spoonfall.estimate.points.Astray;
import spoonfall.estimate.points.Fineness;
import spoonfall.estimate.points.Points;

/** Sits out readings that are astray for a while, and says how that ends. */
final class SitOut {
    /** Only what is thinner than that boils much higher for what goes in: nobody adds sugar to what is nearly done. */
    private static final double SWEETENED_C = 3;

    /** What boils so much higher than it ever did has jumped. */
    private static final double JUMPS_C = 0.8;

    private final FilterBank bank;
    private final Astray astray;
    private final Points points;
    private final Fineness fineness;
    private final BeforeTheFall before;
    private double highestC;

    /** How it ends. */
    enum End {
        /** Not yet. */
        AWAY,
        /** The readings are the pan's again, and the bank knows where it is. */
        BACK,
        /** Something went in, and nothing that was known holds. */
        ANOTHER_PAN
    }

    SitOut(SyrupCurve curve, FilterBank bank, Astray astray, Points points, Fineness fineness) {
        this.bank = bank;
        this.astray = astray;
        this.points = points;
        this.fineness = fineness;
        before = new BeforeTheFall(curve);
    }

    /** Begins afresh, with another pan. */
    void begin() {
        highestC = 0;
        before.forget();
    }

    /** Takes note of a point, astray or not. */
    void point(double t, double riseC) {
        highestC = Math.max(highestC, bank.riseC());
        before.point(t, riseC);
    }

    /**
     * Looks at a point that is astray.
     *
     * @param offC how far it is above what was expected
     * @param sigmaC how far it may be
     */
    End end(double t, double riseC, double offC, double sigmaC) {
        if (astray.back(t, offC, sigmaC)) {
            if (astray.low()) {
                bank.rest(astray.forS(t) / 60);
            }
            fineness.believe(bank, points);
            return End.BACK;
        }
        if (astray.high() && astray.steady(points, bank.climbPerMinC())) {
            if (before.restore(t, riseC, fineness.variance(), bank)) {
                return End.BACK;
            }
            if (before.boiledNoMore(t) && !jumps(riseC)) {
                begin();
                return End.ANOTHER_PAN;
            }
        }
        if (astray.levelled(t, riseC, points, bank.climbPerMinC())) {
            if (astray.low()) {
                before.keep(t, bank);
            }
            bank.reanchor(riseC, fineness.variance());
            return End.BACK;
        }
        return End.AWAY;
    }

    /** Whether it would boil much higher than it ever did, though it is too thick for anybody to sweeten it. */
    private boolean jumps(double riseC) {
        return bank.riseC() >= SWEETENED_C && riseC > highestC + JUMPS_C;
    }
}
