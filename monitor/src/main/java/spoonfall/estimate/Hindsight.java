package spoonfall.estimate;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.SyrupCurve;
import spoonfall.estimate.filter.TrackRecord;

/** What was known of the pan before now: to go back to where readings have misled since, and to learn what forecasts are worth. */
final class Hindsight {
    private static final double EVERY_S = 45;

    private final TrackRecord record;
    private final FilterBank newer;
    private final FilterBank older;
    private double newerT = Double.NaN;
    private double olderT = Double.NaN;

    Hindsight(SyrupCurve curve) {
        record = new TrackRecord(curve);
        newer = new FilterBank(curve);
        older = new FilterBank(curve);
    }

    /** What its forecasts were worth. */
    TrackRecord record() {
        return record;
    }

    /** Begins afresh, with another pan. */
    void begin() {
        record.begin();
        forget();
    }

    /** What was known says nothing of what comes. */
    void forget() {
        newerT = Double.NaN;
        olderT = Double.NaN;
    }

    /** Takes note of what is known at {@code t}. */
    void follow(double t, FilterBank bank) {
        record.follow(t, bank);
        if (Double.isNaN(newerT) || t - newerT >= EVERY_S) {
            older.copyFrom(newer);
            olderT = newerT;
            newer.copyFrom(bank);
            newerT = t;
        }
    }

    /** What comes does not go on from what was known. */
    void breakOff() {
        record.breakOff();
    }

    /** Puts back what was known a minute ago, brought forward to {@code t}; false if nothing was. */
    boolean restore(double t, FilterBank bank) {
        breakOff();
        if (Double.isNaN(olderT)) {
            return false;
        }
        bank.copyFrom(older);
        bank.predict((t - olderT) / 60);
        return true;
    }

    /**
     * Lets the bank lose water as fast as a minute ago, if that is known. A hob that goes off and its hot base fade for a minute or two in
     * which the readings hardly move: by the time the pan is seen to fall, the filters have taken what faded for its heat.
     */
    void restorePace(FilterBank bank) {
        if (!Double.isNaN(olderT)) {
            bank.paceIs(older.v());
        }
    }
}
