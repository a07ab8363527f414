package spoonfall.cook.probe;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import spoonfall.cook.signal.ThermometerStep;
import spoonfall.series.Steepening;

/**
 * Tells a stuck thermometer from a quiet pan. A boiling pan makes a reading flicker, and one that climbs takes it over the
 * thermometer's steps. A reading that stays exactly the same for far longer than it did while the pan went through several
 * steps is stuck, and so is one that should have taken steps and took none. A coarse thermometer in a dilute pan stays the
 * same for minutes and is not. The numbers are common practice, no source.
 */
final class Stillness {
    private static final double LEAST_RUN_S = 60;
    private static final int LEAST_READINGS = 7;
    private static final int LEAST_RUNS = 12;

    /** Of m runs that end by chance the longest lasts ln m mean ones; one in a million lasts 14. */
    private static final double UNLIKELY = 14;

    private static final double LEAST_TIMES = 2.2;
    private static final double MOST_TIMES = 5;

    /** Over so many steps the reading went between flickering at their edges and lying quietly between them. */
    private static final double STEPS_SEEN = 2.5;

    /** Before the run the pan itself, and not its way up to the boil, must have taken it over so many of them. */
    private static final double CLIMBED_STEPS = 1.5;

    /** A reading with so coarse steps must have had one to take, however much it flickered at the last edge. */
    private static final double COARSE_C = 0.2;

    private static final double COARSE_OVERDUE = 0.9;

    /** One that flickered while the pan climbed so many of them, and stood for no longer than that part of one, lies quietly nowhere. */
    private static final double FLICKERED_STEPS = 0.65;

    private static final double STOOD_STEPS = 0.15;
    private static final double QUIET_NOWHERE_S = 120;
    private static final double QUIET_NOWHERE_TIMES = 4;

    /** So many times the climb that it should have made while it stayed the same before, and then went on. */
    private static final double MOST_DUE_TIMES = 2.5;

    private static final double OVERDUE_STEPS = 2;
    private static final double OVERDUE_IF_LONG_STEPS = 1.4;
    private static final double LONG_TIMES = 2;
    private static final int LONG_RUNS = 4;
    private static final double LEAST_OVERDUE_S = 60;

    /** A boiling pan of which nothing is known yet climbs by that at least, in °C a minute: a fine reading shows it. */
    private static final double SLOWEST_PER_MIN_C = 0.04;

    /** A thermometer that was never seen to flicker may be so quiet that it shows a step only where it is due, sooner or later. */
    private static final double DUE_UNSEEN = 1.6;

    private static final double UNKNOWN_S = 90;
    private static final int UNKNOWN_READINGS = 10;

    private static final double SUSPECT_SHARE = 0.4;
    private static final double ONE_STEP = 1.5;
    private static final double GAP_S = 15;
    private static final double GAP_RUNS = 2;

    /** Shorter runs are no matter. */
    private static final double LASTS_S = 5;

    private final Flicker flicker = new Flicker();
    private StillRuns runs = new StillRuns();
    private Optional<StillRuns> ofTheBoil = Optional.empty();
    private int readings;
    private double valueC = Double.NaN;
    private double runSinceT;
    private double lastT;
    private double climbedBeforeC;
    private double surelyClimbedBeforeC;
    private double climbPerMinC;
    private boolean known = true;
    private double growthPerMin;
    private double expectedT = Double.NaN;
    private boolean begunAway;
    private boolean boiling;
    private boolean wentOn;
    private double stepC = 1;

    /** Takes a reading. */
    void accept(double t, double temperatureC) {
        if (Double.isNaN(valueC)) {
            beginRun(t);
        } else if (t - lastT > GAP_S && t - lastT > GAP_RUNS * Math.max(1, runs.longestS())) {
            wentOn = false;
            beginRun(t); // nothing was heard: that is no standstill
        } else if (ThermometerStep.moves(temperatureC - valueC)) {
            flicker.moves(t, temperatureC - valueC, t - runSinceT, readings);
            moves(temperatureC - valueC);
            if (!begunAway) {
                runs.end(t, t - runSinceT, dueC(t - runSinceT));
            }
            beginRun(t);
        } else {
            flicker.stays();
        }
        readings++;
        runs.see(temperatureC);
        valueC = temperatureC;
        lastT = t;
    }

    private void moves(double byC) {
        wentOn = suspect() ? Math.abs(byC) <= ONE_STEP * stepC : wentOn;
    }

    private void beginRun(double t) {
        runSinceT = t;
        begunAway = false;
        readings = 0;
        known = true;
        climbsAnew();
    }

    private void climbsAnew() {
        climbPerMinC = 0;
        climbedBeforeC = runs.climbedC();
        surelyClimbedBeforeC = runs.surelyClimbedC();
    }

    /**
     * What it learnt of one regime says nothing of the next: a warming pan moves more than one that begins to boil. But a pan
     * that was away for a while boils as it did.
     *
     * @param isBoiling whether bubbles make the reading flicker from now on
     */
    void newRegime(boolean isBoiling) {
        begin(isBoiling ? ofTheBoil.orElseGet(StillRuns::new) : new StillRuns(), isBoiling);
        begunAway = isBoiling && ofTheBoil.isPresent();
        ofTheBoil = Optional.empty();
    }

    /** It is not in a boiling pan for a while. What it learnt there is kept. */
    void away() {
        if (boiling) {
            ofTheBoil = Optional.of(runs);
        }
        begin(new StillRuns(), false);
    }

    /** It is in a boiling pan, be it again. */
    void boils() {
        if (!boiling) {
            newRegime(true);
        }
    }

    private void begin(StillRuns others, boolean isBoiling) {
        runs = others;
        boiling = isBoiling;
        climbsAnew();
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
        double sinceS = Double.isNaN(expectedT) ? 0 : Math.min(GAP_S, lastT - expectedT);
        runs.climb(Math.max(0, perMinC.orElse(SLOWEST_PER_MIN_C)) * sinceS / 60, perMinC.isPresent());
        expectedT = lastT;
        if (climbPerMinC == 0 && runS() >= LASTS_S) {
            known = perMinC.isPresent();
            climbPerMinC = Math.max(0, perMinC.orElse(0));
            growthPerMin = Math.max(0, growsPerMin.getAsDouble());
        }
    }

    /** By how many °C it should have climbed in so many seconds. */
    private double dueC(double lastsS) {
        return climbPerMinC * lastsS / 60 * Steepening.times(growthPerMin * lastsS / 60);
    }

    /** How long the reading has been exactly the same, in seconds. */
    double runS() {
        return Double.isNaN(valueC) ? 0 : lastT - runSinceT;
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

    /** Whether the reading was suspect and then went on from where it stood: it had been the pan's all the time. */
    boolean wentOn() {
        return wentOn;
    }

    private boolean stuckAfter(double lastsS, int same) {
        if (lastsS < Math.min(LEAST_OVERDUE_S, LEAST_RUN_S)) {
            return false;
        }
        double longestS = runs.longestS();
        double overdue = dueC(lastsS) / stepC;
        // Whatever should be: a reading that stood as long a while ago and went on is not stuck.
        double leastDueC = known || !boiling ? 0 : SLOWEST_PER_MIN_C * lastsS / 60;
        double dueC = Math.max(leastDueC, dueC(lastsS));
        boolean longerThanEver = lastsS >= longestS && dueC >= MOST_DUE_TIMES * runs.mostDueC();
        boolean fine = stepC < COARSE_C;
        if (boiling && fine && flicker.quiet(runS(), readings)) {
            return false; // it may be the pan that stands
        }
        boolean seesSteps = runs.rangeC() >= STEPS_SEEN * stepC;
        boolean longRun = seesSteps && runs.count() >= LONG_RUNS && lastsS >= LONG_TIMES * longestS;
        double dueSteps = longRun ? OVERDUE_IF_LONG_STEPS : OVERDUE_STEPS;
        if (lastsS >= LEAST_OVERDUE_S && overdue >= dueSteps && longerThanEver) {
            return true;
        }
        if (!boiling || same < LEAST_READINGS || lastsS < LEAST_RUN_S) {
            return false;
        }
        if (runs.count() < LEAST_RUNS) {
            double due = flicker.seen() ? 1 : DUE_UNSEEN;
            boolean aStepWasDue = dueC >= due * stepC;
            return fine && longerThanEver && aStepWasDue && lastsS >= UNKNOWN_S && same >= UNKNOWN_READINGS;
        }
        if (!longerThanEver || lastsS < timesTheLongest() * longestS) {
            return false;
        }
        boolean knowsItsRuns = seesSteps && climbedBeforeC >= CLIMBED_STEPS * stepC;
        if (knowsItsRuns && (fine || overdue >= COARSE_OVERDUE)) {
            return true;
        }
        boolean farLonger = lastsS >= Math.max(QUIET_NOWHERE_S, QUIET_NOWHERE_TIMES * longestS);
        return climbPerMinC > 0 && farLonger && quietNowhere();
    }

    /** Whether it flickered at every height, so that it would also in a pan that stands. */
    private boolean quietNowhere() {
        return surelyClimbedBeforeC >= FLICKERED_STEPS * stepC && runs.mostDueC() <= STOOD_STEPS * stepC;
    }

    private double timesTheLongest() {
        return Math.max(LEAST_TIMES, Math.min(MOST_TIMES, UNLIKELY / Math.log(runs.count())));
    }
}
