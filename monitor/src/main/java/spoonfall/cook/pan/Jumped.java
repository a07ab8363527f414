package spoonfall.cook.pan;

import spoonfall.cook.signal.Signals;

/**
 * Sees a reading that shifts at once and then goes on from there, as a plug or a tip does that moved: a pan gains or loses so
 * much heat over tens of seconds. Two heights must explain the last minute far better than a slope does. What was read
 * before says nothing of what is read after it. The numbers are judgements, no source.
 */
final class Jumped {
    private static final double LEAST_C = 0.6;

    /** A coarse thermometer takes one step at a time while the pan climbs. */
    private static final double STEPS = 1.5;

    /** Looked at are so many seconds to either side, and none of those between. */
    private static final int SIDE_S = 25;

    private static final int BETWEEN_S = 8;
    private static final int ALL_S = 2 * SIDE_S + BETWEEN_S;

    /** What two heights leave unexplained is less than such a part of what a slope leaves. */
    private static final double EXPLAINS = 0.4;

    /** No thermometer is so fine that less than that is anything, as a variance in °C². */
    private static final double NOTHING = 0.0004;

    private static final double SETTLES_S = 30;

    /** Each level twice, so that all of them lie one after the other from whichever is the oldest. */
    private final double[] levelsC = new double[2 * ALL_S];

    private int oldest;
    private int seconds;
    private double lastT;
    private double jumpedT = Double.NEGATIVE_INFINITY;
    private double fromC;
    private double toC;

    /**
     * A jump.
     *
     * @param fromC where the reading was before it
     * @param toC where it is since
     * @param agoS how many seconds ago it was at the latest that it had not jumped yet
     */
    record Shift(double fromC, double toC, double agoS) {}

    /** Forgets the way here. */
    void restart() {
        seconds = 0;
    }

    /** Takes note of where the reading is; whether it has just been seen that it jumped. To be asked once a second. */
    boolean endSecond(Signals now) {
        if (now.t() - lastT > 1) {
            restart(); // nothing was heard meanwhile
        }
        lastT = now.t();
        levelsC[oldest] = now.levelC();
        levelsC[oldest + ALL_S] = now.levelC();
        oldest = (oldest + 1) % ALL_S;
        seconds++;
        double leastC = Math.max(LEAST_C, STEPS * now.knownStepC());
        boolean jumps = seconds >= ALL_S
                && now.t() - jumpedT >= SETTLES_S
                && Math.abs(now.levelC() - at(ALL_S - SIDE_S - BETWEEN_S)) >= leastC / 2
                && jumps(leastC);
        jumpedT = jumps ? now.t() : jumpedT;
        return jumps;
    }

    /** The jump that was seen last. */
    Shift shift() {
        return new Shift(fromC, toC, SIDE_S + BETWEEN_S);
    }

    private boolean jumps(double leastC) {
        double sumBeforeC = 0;
        double sumAfterC = 0;
        for (int i = 0; i < SIDE_S; i++) {
            sumBeforeC += at(i);
            sumAfterC += at(SIDE_S + BETWEEN_S + i);
        }
        double beforeC = sumBeforeC / SIDE_S;
        double afterC = sumAfterC / SIDE_S;
        double shiftC = afterC - beforeC;
        if (Math.abs(shiftC) < leastC) {
            return false;
        }
        double middleC = (beforeC + afterC) / 2;
        double middleT = (ALL_S - 1) / 2.0;
        double heights = NOTHING * 2 * SIDE_S;
        double all = 0;
        double times = 0;
        double both = 0;
        for (int i = 0; i < ALL_S; i++) {
            boolean before = i < SIDE_S;
            if (before || i >= SIDE_S + BETWEEN_S) {
                double sideC = at(i) - (before ? beforeC : afterC);
                double offC = at(i) - middleC;
                double sinceT = i - middleT;
                heights += sideC * sideC;
                all += offC * offC;
                times += sinceT * sinceT;
                both += sinceT * offC;
            }
        }
        double slope = all - both * both / times;
        boolean jumps = heights < EXPLAINS * slope;
        if (jumps) {
            fromC = beforeC;
            toC = afterC;
        }
        return jumps;
    }

    /** The level of the second {@code i}, the oldest of all being the first. */
    private double at(int i) {
        return levelsC[oldest + i];
    }
}
