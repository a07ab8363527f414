package spoonfall.settest;

import java.util.Locale;

/** Counts how cooks end: at their set, short of it or past it, and after how many tests. */
public final class SetTestStudy {
    /** Past its set by more than that in °C a preserve is overcooked (the task's own limit). */
    public static final double OVERSHOOT_C = 0.5;

    /** Nobody can tell a preserve so little below its set from one that is at it: the eye's own error. */
    public static final double TELLS_C = 0.2;

    private final String what;
    private int cooks;
    private int reached;
    private int said;
    private int overshot;
    private int tests;

    /** A study of nothing yet. */
    public SetTestStudy(String what) {
        this.what = what;
    }

    /**
     * Counts a cook that ended because somebody said that it was set.
     *
     * @param secondPastC how far past its true set the pan was at the second test, or at the first if it ended there, in °C;
     *     negative when short of it
     * @param endPastC the same where it ended
     * @param used how many tests it took
     */
    public void count(double secondPastC, double endPastC, int used) {
        cooks++;
        tests += used;
        reached += secondPastC >= -TELLS_C ? 1 : 0;
        said += endPastC >= -TELLS_C && used <= 2 ? 1 : 0;
        overshot += endPastC > OVERSHOOT_C ? 1 : 0;
    }

    /** How many cooks it counted. */
    public int cooks() {
        return cooks;
    }

    /** The share that was at its true set by the second test. */
    public double reachedByTheSecond() {
        return reached / (double) cooks;
    }

    /** The share that ended more than {@link #OVERSHOOT_C} past it. */
    public double overshot() {
        return overshot / (double) cooks;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %d cooks; at the true set by the second test %.1f %%, and said to be set by then %.1f %%; "
                        + "ended more than %.1f °C past it %.1f %%; %.2f tests each",
                what,
                cooks,
                100 * reachedByTheSecond(),
                100.0 * said / cooks,
                OVERSHOOT_C,
                100 * overshot(),
                tests / (double) cooks);
    }
}
