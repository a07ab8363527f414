package spoonfall.estimate;

/** What was known of the pan before now: to go back to where readings have misled, and to learn what forecasts are worth. */
final class Hindsight {
    private final Remembered remembered;
    private final TrackRecord record;

    Hindsight(SyrupCurve curve) {
        remembered = new Remembered(curve);
        record = new TrackRecord(curve);
    }

    TrackRecord record() {
        return record;
    }

    /** Begins afresh, with another pan. */
    void begin() {
        remembered.forget();
        record.begin();
    }

    /** Takes note of what is known at {@code t}. */
    void follow(double t, FilterBank bank) {
        remembered.follow(t, bank);
        record.follow(t, bank);
    }

    /** What comes does not go on from what was known. */
    void breakOff() {
        record.breakOff();
    }

    /** Puts back what was known a minute ago, brought forward to {@code t}; false if nothing was. */
    boolean restore(double t, FilterBank bank) {
        record.breakOff();
        return remembered.restore(t, bank);
    }
}
