package spoonfall.estimate;

/**
 * How fast a pan lost its water a while ago. A hob that goes off and its hot base fade for a minute or two in which the readings
 * hardly move: by the time the pan is seen to fall, the filters have taken what faded for its heat, and would go on with
 * that once it boils again. The numbers are judgements, no source.
 */
final class EarlierPace {
    /** So long before the readings lie below the pan its heat was still whole, in seconds. */
    private static final double BEFORE_S = 90;

    private static final int KEPT = 64;

    private final double[] times = new double[KEPT];
    private final double[] paces = new double[KEPT];
    private int taken;

    /** Begins afresh, with another pan. */
    void begin() {
        taken = 0;
    }

    /** Takes note of what is known at {@code t}. */
    void follow(double t, FilterBank bank) {
        times[taken % KEPT] = t;
        paces[taken % KEPT] = bank.v();
        taken++;
    }

    /** Lets the bank lose water as it did before a fall that was seen at {@code t}; as it is, if nothing was known so early. */
    void restore(double t, FilterBank bank) {
        for (int i = taken - 1; i >= Math.max(0, taken - KEPT); i--) {
            if (times[i % KEPT] <= t - BEFORE_S) {
                bank.paceIs(paces[i % KEPT]);
                return;
            }
        }
    }
}
