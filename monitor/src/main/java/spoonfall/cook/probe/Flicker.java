package spoonfall.cook.probe;

/**
 * Whether a reading goes to and fro, as bubbles and noise make it do, or goes quietly from one step to the next. A quiet one that stands
 * says nothing of the thermometer: the pan may stand. The numbers are judgements, no source.
 */
final class Flicker {
    /** So many moves in turn, up and down, no stir makes, nor a burner that switches. */
    private static final int MOVES = 4;

    private static final double WITHIN_S = 60;
    private static final int WITHIN_READINGS = 12;

    /** Where noise goes to and fro at each step, no two long runs follow each other. */
    private static final double LONG_S = 30;

    private static final int LONG_READINGS = 10;

    private final double[] movedT = new double[MOVES];
    private final int[] movedAt = new int[MOVES];
    private int inTurn;
    private boolean up;
    private int readings;
    private boolean seen;
    private boolean longBefore;
    private boolean quietStep;

    /** Takes note of a reading that is the same as the one before. */
    void stays() {
        readings++;
    }

    /** Takes note of one that differs by {@code byC}, after it had been the same for {@code runS} seconds and {@code same} readings. */
    void moves(double t, double byC, double runS, int same) {
        readings++;
        boolean goesOn = byC > 0 == up;
        up = byC > 0;
        inTurn = goesOn ? 1 : inTurn + 1;
        movedT[inTurn % MOVES] = t;
        movedAt[inTurn % MOVES] = readings;
        int first = (inTurn + 1) % MOVES;
        boolean soon = t - movedT[first] <= WITHIN_S || readings - movedAt[first] <= WITHIN_READINGS;
        seen |= inTurn >= MOVES && soon;
        quietStep |= quiet(runS, same);
        longBefore = goesOn && isLong(runS, same);
    }

    /** Whether it was ever seen to go to and fro. */
    boolean seen() {
        return seen;
    }

    /** Whether it goes quietly from one step to the next; by now it has been the same for {@code runS} seconds and {@code same} readings. */
    boolean quiet(double runS, int same) {
        return !seen && (quietStep || (longBefore && isLong(runS, same)));
    }

    private static boolean isLong(double runS, int same) {
        return runS >= LONG_S && same >= LONG_READINGS;
    }
}
