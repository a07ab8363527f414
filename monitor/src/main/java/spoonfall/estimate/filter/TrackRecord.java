package spoonfall.estimate.filter;

/**
 * How far this pan has kept to what was foretold of it. Every half minute what is known is set aside; two minutes later it
 * is carried on without the readings that came and held against them. Surprises that fall to both sides are chance; those
 * that go one way for long say that this pan is not what the filters take it for, and their intervals too narrow.
 *
 * <p>The numbers are those that brought the intervals of our own and of other simulators' cooks nearest to nine in ten, all at
 * once (docs/decisions/006-estimator.md).
 */
public final class TrackRecord {
    private static final double EVERY_S = 30;
    private static final int KEPT = 4;
    private static final double LONGEST_S = 200;
    private static final double FORGETS_MIN = 4;

    /** So many surprises of nothing at all are believed to have come before the first. */
    private static final double FAITH = 10;

    /** A single surprise says no more than that, in standard deviations. */
    private static final double MOST = 4;

    private static final double WIDTH = 0.46;

    /** A pan that was not held against anything yet may be any: so much wider, and the less the more surprises were seen. */
    private static final double UNTRIED = 0.6;

    private static final double WIDENS = 6;
    private static final double WIDEST = 2.5;

    private final PanFilter[] kept = new PanFilter[KEPT];
    private final double[] times = new double[KEPT];
    private final PanFilter carried;
    private int count;
    private double lastT = Double.NEGATIVE_INFINITY;
    private double surprises;
    private double weight;

    /** With nothing foreseen yet. */
    public TrackRecord(SyrupCurve curve) {
        carried = new PanFilter(curve);
        for (int i = 0; i < KEPT; i++) {
            kept[i] = new PanFilter(curve);
        }
    }

    /** Begins afresh, with another pan. */
    public void begin() {
        breakOff();
        surprises = 0;
        weight = 0;
    }

    /** What comes does not go on from what was known: nobody could have foretold it. */
    public void breakOff() {
        count = 0;
    }

    /** Takes note of what is known at {@code t}, after a point was believed. */
    public void follow(double t, FilterBank bank) {
        if (t - lastT < EVERY_S) {
            return;
        }
        double remembers = Math.exp(-(t - lastT) / 60 / FORGETS_MIN);
        surprises *= remembers;
        weight *= remembers;
        lastT = t;
        int slot = count % KEPT;
        if (count >= KEPT && t - times[slot] <= LONGEST_S) {
            surprises += surprise(kept[slot], (t - times[slot]) / 60, bank);
            weight++;
        }
        bank.collapseInto(kept[slot]);
        times[slot] = t;
        count++;
    }

    /** What the spread of a forecast must be multiplied by. */
    double width() {
        double untried = 1 + UNTRIED / (1 + weight);
        return untried * Math.min(WIDEST, WIDTH * Math.exp(WIDENS * Math.abs(mean())));
    }

    /** By how many standard deviations the pan was hotter than foretold, on the average. */
    private double mean() {
        return surprises / (weight + FAITH);
    }

    private double surprise(PanFilter foretold, double minutes, FilterBank bank) {
        carried.copyFrom(foretold);
        carried.carry(minutes, bank.inverting().growth(bank.u()));
        carried.look(bank.riseC(), bank.riseVariance());
        double off = carried.innovationC() / Math.sqrt(carried.innovationVariance());
        return Math.max(-MOST, Math.min(MOST, off));
    }
}
