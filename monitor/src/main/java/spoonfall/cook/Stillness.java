package spoonfall.cook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;

/**
 * Tells a stuck thermometer from a quiet pan. A boiling pan makes a reading flicker: one that stays exactly the same
 * for much longer than it ever did of late is stuck, and so is one that should have moved by several of its steps. A
 * coarse thermometer in a dilute pan stays the same for minutes and is not. The numbers are common practice, no source.
 */
final class Stillness {
    private static final double LEAST_RUN_S = 75;
    private static final double TIMES_THE_LONGEST = 4;
    private static final double KEEP_S = 600;
    private static final double LEARN_S = 240;
    private static final int LEAST_RUNS = 12;

    /** A reading that flickers so often has shown within a minute what it does. */
    private static final int MANY_RUNS = 30;

    private static final double LEARN_FROM_MANY_S = 60;
    private static final double TIMES_SO_SOON = 8;
    private static final double STEPS_OVERDUE = 5;
    private static final double LEAST_OVERDUE_S = 150;
    private static final double SUSPECT_SHARE = 0.4;
    private static final double GAP_S = 15;
    private static final double GAP_RUNS = 2;
    private static final double SAME_C = 1e-6;

    private final Deque<double[]> longer = new ArrayDeque<>();
    private int runs;
    private OptionalDouble valueC = OptionalDouble.empty();
    private double runSinceT;
    private double lastT;
    private double learntSinceT;
    private boolean boiling;

    /** Takes a reading. */
    void accept(double t, double temperatureC) {
        if (valueC.isEmpty()) {
            learntSinceT = t;
            runSinceT = t;
        } else if (t - lastT > GAP_S && t - lastT > GAP_RUNS * Math.max(1, longestS())) {
            runSinceT = t; // nothing was heard: that is no standstill
        } else if (Math.abs(temperatureC - valueC.getAsDouble()) > SAME_C) {
            endRun(t, t - runSinceT);
            runSinceT = t;
        }
        valueC = OptionalDouble.of(temperatureC);
        lastT = t;
    }

    /** Keeps the runs that are longer than all later ones: the first of them is the longest. */
    private void endRun(double t, double lengthS) {
        while (!longer.isEmpty() && longer.getLast()[1] <= lengthS) {
            longer.removeLast();
        }
        longer.addLast(new double[] {t, lengthS});
        while (longer.getFirst()[0] < t - KEEP_S) {
            longer.removeFirst();
        }
        runs++;
    }

    /**
     * What it learnt of one regime says nothing of the next: a warming pan moves more than one that begins to boil.
     *
     * @param isBoiling whether bubbles make the reading flicker from now on
     */
    void newRegime(double t, boolean isBoiling) {
        boiling = isBoiling;
        longer.clear();
        runs = 0;
        learntSinceT = t;
    }

    /** How long the reading has been exactly the same, in seconds. */
    double runS() {
        return valueC.isEmpty() ? 0 : lastT - runSinceT;
    }

    /**
     * Whether it is stuck.
     *
     * @param expectedPerMinC how fast the pan should be moving; empty when that is not known
     * @param stepC the smallest step the thermometer has shown
     */
    boolean stuck(OptionalDouble expectedPerMinC, double stepC) {
        double overdueC = expectedPerMinC.orElse(0) * runS() / 60;
        if (runS() >= LEAST_OVERDUE_S && overdueC >= STEPS_OVERDUE * stepC) {
            return true;
        }
        return longerThanLearnt(runS());
    }

    private boolean longerThanLearnt(double lastsS) {
        double learntS = runSinceT - learntSinceT;
        boolean slowly = runs >= LEAST_RUNS && learntS >= LEARN_S;
        boolean soon = runs >= MANY_RUNS && learntS >= LEARN_FROM_MANY_S && lastsS >= TIMES_SO_SOON * longestS();
        return boiling && (slowly || soon) && lastsS >= LEAST_RUN_S && lastsS >= TIMES_THE_LONGEST * longestS();
    }

    /** Whether it may turn out to be stuck: long enough to wait with a judgement that rests on a moving reading. */
    boolean suspect() {
        return longerThanLearnt(runS() / SUSPECT_SHARE);
    }

    private double longestS() {
        return longer.isEmpty() ? 0 : longer.getFirst()[1];
    }
}
