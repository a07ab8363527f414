package spoonfall.estimate;

/** What was known of the pan a minute ago, for when it turns out that the readings have misled since. */
final class Remembered {
    private static final double EVERY_S = 45;

    private final FilterBank newer;
    private final FilterBank older;
    private double newerT = Double.NaN;
    private double olderT = Double.NaN;

    Remembered(SyrupCurve curve) {
        newer = new FilterBank(curve);
        older = new FilterBank(curve);
    }

    void forget() {
        newerT = Double.NaN;
        olderT = Double.NaN;
    }

    /** Takes note, from time to time. */
    void follow(double t, FilterBank bank) {
        if (Double.isNaN(newerT) || t - newerT >= EVERY_S) {
            older.copyFrom(newer);
            olderT = newerT;
            newer.copyFrom(bank);
            newerT = t;
        }
    }

    /** Puts back what was known, brought forward to {@code t}; false if nothing was. */
    boolean restore(double t, FilterBank bank) {
        if (Double.isNaN(olderT)) {
            return false;
        }
        bank.copyFrom(older);
        bank.predict((t - olderT) / 60);
        return true;
    }
}
