package spoonfall.cook.probe;

import spoonfall.cook.signal.ThermometerStep;

/**
 * Tells a thermometer that speaks only when its reading has moved. In a quiet pan it says nothing for a while, and is not
 * silent. Readings that move by single steps, up as well as down, stay the same at least as often, since what neither
 * climbs nor falls is likeliest not to move at all: where none ever stays the same and many come late, those that did were
 * not told. One that dies is believed for that minute, and what is foreseen drifts later meanwhile. The numbers are judgements, no source.
 */
final class OnChange {
    private static final int READINGS = 12;

    /** Noise that takes a reading over several steps may miss none for that long by chance. */
    private static final int LEAST_SINGLE = 8;

    private static final int LEAST_EACH_WAY = 3;
    private static final double STEP_SLACK = 1.5;

    /** A reading that moves by less slackens, and may soon say nothing for a while if it speaks of changes only. */
    private static final double SMALL_STEPS = 2.5;

    /** Who said so often that nothing has moved says everything; of one that speaks of changes only a change is lost once in a while. */
    private static final int FEW_REPEATS = 5;

    /** Who speaks at an even pace says everything. */
    private static final int LEAST_LATE = 3;

    /** After so many short intervals a reading comes late. */
    private static final double LATE_INTERVALS = 2.5;

    /** Many say once in a while that nothing has moved: what comes after so many short intervals is such a word. */
    private static final double SIGN_OF_LIFE_INTERVALS = 4;

    /** Sooner after each other come readings that waited somewhere, and tell nothing of the thermometer's pace. */
    private static final double LEAST_INTERVAL_S = 0.05;

    /** By these the short interval follows: some one in twelve are shorter. */
    private static final double SHORTER = 0.8;

    private static final double LONGER = 1.02;

    private final ThermometerStep step = new ThermometerStep();
    private final double[] movesC = new double[READINGS];
    private final boolean[] late = new boolean[READINGS];
    private int lates;
    private int next;

    /** How many moves came since one stayed the same. One whose change was lost on the way stays the same once in a long while. */
    private int moves;

    private int repeats;
    private boolean seen;
    private double shortS = Double.NaN;
    private double lastT = Double.NaN;
    private double lastC = Double.NaN;

    /** Takes a good reading. */
    void accept(double t, double temperatureC) {
        double moveC = temperatureC - lastC;
        double sinceS = t - lastT;
        lastT = t;
        lastC = temperatureC;
        step.accept(temperatureC);
        if (Double.isNaN(moveC) || sinceS < LEAST_INTERVAL_S) {
            return;
        }
        shortS = Double.isNaN(shortS) ? sinceS : shortS * (sinceS < shortS ? SHORTER : LONGER);
        if (ThermometerStep.moves(moveC)) {
            note(moveC, sinceS > LATE_INTERVALS * shortS);
            moves = Math.min(moves + 1, 2 * READINGS);
        } else if (sinceS < SIGN_OF_LIFE_INTERVALS * shortS) {
            moves = seen ? moves - READINGS : 0;
            repeats++;
        }
        seen = moves >= READINGS && (seen || (lates >= LEAST_LATE && bySingleSteps()));
    }

    private void note(double moveC, boolean isLate) {
        lates += isLate ? 1 : 0;
        lates -= late[next] ? 1 : 0;
        movesC[next] = moveC;
        late[next] = isLate;
        next = (next + 1) % READINGS;
    }

    /** Takes note of a reading that was lost: the next one moved from that, not from the last. */
    void lost() {
        lastC = Double.NaN;
    }

    /** Whether it speaks of changes only. */
    boolean seen() {
        return seen;
    }

    /**
     * Whether it may do so, for all that is known yet: on a pan's way up to the boil no reading stays the same, and none comes late. One
     * that now moves little, as where the boil begins, may say nothing for a while.
     */
    boolean maybe() {
        double latestC = movesC[(next + READINGS - 1) % READINGS];
        return repeats < FEW_REPEATS && moves >= READINGS && Math.abs(latestC) < SMALL_STEPS * step.c();
    }

    private boolean bySingleSteps() {
        int up = 0;
        int down = 0;
        for (double moveC : movesC) {
            boolean single = Math.abs(moveC) < STEP_SLACK * step.c();
            up += single && moveC > 0 ? 1 : 0;
            down += single && moveC < 0 ? 1 : 0;
        }
        return up + down >= LEAST_SINGLE && Math.min(up, down) >= LEAST_EACH_WAY;
    }
}
