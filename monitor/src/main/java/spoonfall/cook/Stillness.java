package spoonfall.cook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * Tells a stuck thermometer from a quiet pan. A boiling pan makes a reading flicker, and one that climbs takes it over the
 * thermometer's steps. A reading that stays exactly the same for far longer than it did while the pan went through several
 * steps is stuck, and so is one that should have taken steps and took none. A coarse thermometer in a dilute pan stays the
 * same for minutes and is not. The numbers are common practice, no source.
 */
final class Stillness {
    private static final double LEAST_RUN_S = 60;
    private static final int LEAST_READINGS = 7;
    private static final double KEEP_S = 600;
    private static final int LEAST_RUNS = 12;

    /** Of m runs that end by chance the longest lasts ln m mean ones; one in a million lasts 14. */
    private static final double UNLIKELY = 14;

    private static final double LEAST_TIMES = 2.2;
    private static final double MOST_TIMES = 5;

    /** Over so many steps the reading went between flickering at their edges and lying quietly between them. */
    private static final double STEPS_SEEN = 2.5;

    /** A reading with so coarse steps must have had one to take, however much it flickered at the last edge. */
    private static final double COARSE_C = 0.2;

    private static final double COARSE_OVERDUE = 0.9;

    private static final double OVERDUE_STEPS = 2;
    private static final double OVERDUE_IF_LONG_STEPS = 1.4;
    private static final double LONG_TIMES = 2;
    private static final int LONG_RUNS = 4;
    private static final double LEAST_OVERDUE_S = 60;

    private static final double SUSPECT_SHARE = 0.4;
    private static final double CAUGHT_UP_STEPS = 1.5;
    private static final double GAP_S = 15;
    private static final double GAP_RUNS = 2;

    /** Shorter runs are no matter. */
    private static final double LASTS_S = 5;

    private static final double SAME_C = 1e-6;

    private final Deque<double[]> longer = new ArrayDeque<>();
    private int runs;
    private int readings;
    private OptionalDouble valueC = OptionalDouble.empty();
    private double runSinceT;
    private double lastT;
    private double lowestC = Double.POSITIVE_INFINITY;
    private double highestC = Double.NEGATIVE_INFINITY;
    private double climbPerMinC;
    private double growthPerMin;
    private boolean boiling;
    private boolean caughtUp;
    private double stepC = 1;

    /** Takes a reading. */
    void accept(double t, double temperatureC) {
        if (valueC.isEmpty()) {
            beginRun(t);
        } else if (t - lastT > GAP_S && t - lastT > GAP_RUNS * Math.max(1, longestS())) {
            beginRun(t); // nothing was heard: that is no standstill
        } else if (Math.abs(temperatureC - valueC.getAsDouble()) > SAME_C) {
            caughtUp = suspect() && temperatureC - valueC.getAsDouble() > CAUGHT_UP_STEPS * stepC;
            endRun(t, t - runSinceT);
            beginRun(t);
        }
        readings++;
        lowestC = Math.min(lowestC, temperatureC);
        highestC = Math.max(highestC, temperatureC);
        valueC = OptionalDouble.of(temperatureC);
        lastT = t;
    }

    private void beginRun(double t) {
        runSinceT = t;
        readings = 0;
        climbPerMinC = 0;
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
    void newRegime(boolean isBoiling) {
        boiling = isBoiling;
        longer.clear();
        runs = 0;
        climbPerMinC = 0;
        lowestC = Double.POSITIVE_INFINITY;
        highestC = Double.NEGATIVE_INFINITY;
    }

    /**
     * How the pan moves, which a stuck reading would hide. What was known when the reading began to stay the same counts.
     *
     * @param perMinC how fast it should be climbing, in °C per minute; empty when that is not known
     * @param growsPerMin by what part of it that grows each minute, since syrup's curve steepens
     * @param thermometerStepC the smallest step that the thermometer has shown, in °C
     */
    void expect(OptionalDouble perMinC, DoubleSupplier growsPerMin, double thermometerStepC) {
        stepC = thermometerStepC;
        if (climbPerMinC == 0 && runS() >= LASTS_S) {
            climbPerMinC = Math.max(0, perMinC.orElse(0));
            growthPerMin = Math.max(0, growsPerMin.getAsDouble());
        }
    }

    /** By how many °C it should have climbed in so many seconds. */
    private double dueC(double lastsS) {
        return climbPerMinC * lastsS / 60 * Steepening.times(growthPerMin * lastsS / 60);
    }

    /** By how many °C the pan should have climbed since the reading is the same. */
    double dueC() {
        return dueC(runS());
    }

    /** How long the reading has been exactly the same, in seconds. */
    double runS() {
        return valueC.isEmpty() ? 0 : lastT - runSinceT;
    }

    /** Since when it has been exactly the same. */
    double runSinceT() {
        return runSinceT;
    }

    /** Whether it is stuck. */
    boolean stuck() {
        return stuckAfter(runS(), readings);
    }

    /** Whether it may turn out to be stuck: long enough to wait with a judgement that rests on a moving reading. */
    boolean suspect() {
        return stuckAfter(runS() / SUSPECT_SHARE, (int) (readings / SUSPECT_SHARE));
    }

    /** Whether the reading was suspect and then leapt up to where the pan had gone meanwhile; asking forgets it. */
    boolean caughtUp() {
        boolean leapt = caughtUp;
        caughtUp = false;
        return leapt;
    }

    private boolean stuckAfter(double lastsS, int same) {
        if (lastsS < Math.min(LEAST_OVERDUE_S, LEAST_RUN_S)) {
            return false;
        }
        double overdue = dueC(lastsS) / stepC;
        boolean longRun = runs >= LONG_RUNS && lastsS >= LONG_TIMES * longestS();
        double dueSteps = longRun ? OVERDUE_IF_LONG_STEPS : OVERDUE_STEPS;
        // Whatever should be: a reading that stood as long a while ago and went on is not stuck.
        if (lastsS >= LEAST_OVERDUE_S && overdue >= dueSteps && lastsS >= longestS()) {
            return true;
        }
        boolean seesSteps = highestC - lowestC >= STEPS_SEEN * stepC && (stepC < COARSE_C || overdue >= COARSE_OVERDUE);
        return boiling
                && seesSteps
                && runs >= LEAST_RUNS
                && same >= LEAST_READINGS
                && lastsS >= LEAST_RUN_S
                && lastsS >= timesTheLongest() * longestS();
    }

    private double timesTheLongest() {
        return Math.max(LEAST_TIMES, Math.min(MOST_TIMES, UNLIKELY / Math.log(Math.max(2, runs))));
    }

    private double longestS() {
        return longer.isEmpty() ? 0 : longer.getFirst()[1];
    }
}
