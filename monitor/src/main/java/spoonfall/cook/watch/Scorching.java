package spoonfall.cook.watch;

import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.cook.Pace;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.forecast.Foreseen;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.estimate.standing.Thin;
import spoonfall.series.RobustLine;
import spoonfall.series.Track;

/**
 * Tells a base that begins to catch: the reading climbs to new heights faster than water could be leaving. What the water allows
 * is taken from what was known two minutes ago, for a base that catches drags along what is known of the pan. Where the readings have
 * grown restless besides, less is asked of the climb. The numbers are common practice, no source.
 */
final class Scorching {
    private static final double SETTLE_S = 180;
    private static final double TIMES = 3;
    private static final double RESTLESS_TIMES = 2;
    private static final double SIGMAS = 1;
    private static final double LEAST_PER_MIN_C = 0.6;
    private static final double RESTLESS_LEAST_PER_MIN_C = 0.5;

    /** A climb of so many of the thermometer's steps a minute is more than one step seen in a short while. */
    private static final double STEPS = 4;

    /** Over two minutes, a coarse one: fewer steps a minute tell as much. */
    private static final double COARSE_STEPS = 1.6;

    private static final double NEW_HEIGHTS_C = 0.3;

    /** So far above the height that was due it must be: some of that is noise, and some a curve that steepens more than ours. */
    private static final double ABOVE_C = 0.1;

    private static final double ABOVE_SIGMAS = 5;

    /** So long after a stall the pan may still be on its way back. */
    private static final double STOOD_S = 180;

    /** A reading that does so much of its climb within one third of the time has jumped: no base heats like that. */
    private static final double JUMP_SHARE = 0.75;

    private static final double REMEMBERS_S = 240;

    private final double waterBoilC;
    private final Foreseen foreseen;
    private final Track levels = new Track(REMEMBERS_S);
    private double stoodT = Double.NEGATIVE_INFINITY;
    private final Restless restless = new Restless();
    private double climbsPerMinC;
    private double allowedPerMinC;
    private boolean shakes;

    /** {@code waterBoilC} is where plain water boils. */
    Scorching(double waterBoilC) {
        this.waterBoilC = waterBoilC;
        foreseen = new Foreseen(waterBoilC);
    }

    /** Forgets the way here. */
    void restart() {
        foreseen.forget(); // what is older than that is not asked for again
        restless.restart();
    }

    /** Whether the base catches; to be asked once a second. {@code stands} says whether the pan stands or cools. */
    Condition judge(Stages stages, Signals now, Forecaster forecaster, boolean stands) {
        double t = now.t();
        levels.add(t, now.levelC());
        restless.endSecond(now);
        stoodT = stands ? t : stoodT;
        if (!stages.stage().boiling()) {
            foreseen.forget();
            return Condition.ABSENT;
        }
        foreseen.remember(t, forecaster);
        OptionalDouble allowed = foreseen.climbPerMinC(t - Foreseen.KNOWN_S);
        boolean tooSoon = stages.boilingForS(t) < SETTLE_S;
        if (tooSoon
                || allowed.isEmpty()
                || now.quick().isEmpty()
                || now.steady().isEmpty()) {
            return Condition.UNDECIDED;
        }
        boolean coarse = Signals.coarse(now.stepC());
        RobustLine line = (coarse ? now.steady() : now.quick()).get();
        double least = Math.max(LEAST_PER_MIN_C, (coarse ? COARSE_STEPS : STEPS) * now.stepC());
        allowedPerMinC = allowed.getAsDouble();
        climbsPerMinC = Signals.perMinute(line);
        double calmLimit = Math.max(TIMES * allowedPerMinC, least);
        double restlessLimit = Math.max(RESTLESS_TIMES * allowedPerMinC, RESTLESS_LEAST_PER_MIN_C);
        double surelyPerMinC = climbsPerMinC - SIGMAS * 60 * line.slopeError();
        shakes = surelyPerMinC > restlessLimit && restless.grown(now);
        double limit = shakes ? restlessLimit : calmLimit;
        Condition tooFast = Condition.above(surelyPerMinC, limit, limit / 2);
        if (tooFast != Condition.PRESENT) {
            return tooFast;
        }
        double overS = coarse ? Pace.BY_ITSELF.steadyS() : Pace.BY_ITSELF.quickS();
        boolean comesBack = t - stoodT <= STOOD_S; // from a stall it climbs as fast
        boolean sure = !comesBack && atNewHeights(now) && !jumped(t, overS);
        return sure ? Condition.PRESENT : Condition.UNDECIDED;
    }

    /** After a stir the reading climbs as fast, but only back to where it was, and into a thin pan may go its sugar. */
    private boolean atNewHeights(Signals now) {
        double knownT = now.t() - Foreseen.KNOWN_S;
        double dueC = foreseen.heightC(knownT).orElse(now.levelC());
        return dueC > waterBoilC + Thin.KNOWN_C
                && now.levelC() > now.earlierPeakC() + allowedPerMinC + NEW_HEIGHTS_C
                && now.levelC() - dueC > Math.max(ABOVE_C, ABOVE_SIGMAS * foreseen.noiseC(knownT));
    }

    private boolean jumped(double t, double overS) {
        double thirdS = overS / 3;
        double[] heightsC = new double[4];
        for (int i = 0; i < heightsC.length; i++) {
            heightsC[i] = levels.valueAt(t - i * thirdS).orElse(Double.NaN);
        }
        double wholeC = heightsC[0] - heightsC[3];
        double mostC = 0;
        for (int i = 1; i < heightsC.length; i++) {
            mostC = Math.max(mostC, heightsC[i - 1] - heightsC[i]);
        }
        return !(mostC < JUMP_SHARE * wholeC);
    }

    /** What to say of the climb that was judged last. */
    AlarmText text() {
        return AlarmText.scorchRisk(climbsPerMinC, allowedPerMinC, shakes);
    }
}
