package spoonfall.cook.pan;

import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.PastGelPoint;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.cook.watch.TooFast;

/**
 * How high the pan is taken to be by all that is known of it, which its stage is judged by. What is read counts, but not where
 * it climbs faster than water could leave, nor as the gel point while that may yet be far away.
 */
final class PanHeight {
    /** What climbs too fast is held back by so much below the gel point until it is seen whether it is real. */
    private static final double NOT_YET_C = 0.05;

    /** Back from a set test it climbs as fast, but only to where it was. */
    private static final double NEW_HEIGHTS_C = 0.3;

    /** The gel point is not called while it may be further away than that, in seconds. */
    private static final double TOO_EARLY_S = 240;

    /** What falls faster than that, in °C a minute, does not come to the gel point. */
    private static final double FALLS_PER_MIN_C = 0.8;

    private final Pace pace;
    private final Stages stages;
    private final Forecaster forecaster;
    private final SetTests tests;
    private final PanAlarms alarms;
    private final TooFast tooFast;
    private final SugarIn sugar;

    PanHeight(
            CookSettings settings,
            Pace pace,
            Stages stages,
            Forecaster forecaster,
            SetTests tests,
            PanAlarms alarms,
            SugarIn sugar) {
        this.pace = pace;
        this.stages = stages;
        this.forecaster = forecaster;
        this.tests = tests;
        this.alarms = alarms;
        this.sugar = sugar;
        tooFast = new TooFast(settings.waterBoil().temperatureC());
    }

    /** Forgets the way here, at {@code t}. */
    void restart(double t) {
        tooFast.restart(t);
    }

    /** How high it is, in °C; to be asked once a second. {@code readT} is when it was read last. */
    double knownC(double readT, Signals now) {
        double t = now.t();
        double knownC = byReadings(readT, now);
        if (pace.shows()) {
            knownC = sugar.mayGo(t) ? Math.min(knownC, now.levelC()) : knownC; // a line through its climb leads past it
            knownC = Math.min(knownC, tooFast.atMostC(now, stages.boilingForS(t), pace.noticesS(), forecaster));
        }
        if (stages.stage().atOrPastGelPoint() || !tooEarly(now, knownC)) {
            return knownC;
        }
        return Math.min(knownC, tests.aim().gelPointC() - NOT_YET_C);
    }

    /**
     * That it went on too far must be read, not only foreseen, where readings are minutes apart; and so must the window be while
     * nothing is known of its climb: a line through the way to the boil leads past that.
     */
    private double byReadings(double readT, Signals now) {
        double knownC = forecaster.temperatureC(pace.carriedT(now.t(), readT), now.trendC());
        double mostC = tests.aim().gelPointC() + PastGelPoint.MARGIN_C - NOT_YET_C;
        if (pace.shows()) {
            mostC = forecaster.knows() ? knownC : tests.aim().windowFromC() - NOT_YET_C;
        }
        return Math.min(knownC, Math.max(now.levelC(), mostC));
    }

    /** Whether the pan may yet be far from the gel point, though it seems to be there or climbs as if it were. */
    private boolean tooEarly(Signals now, double knownC) {
        double thereC = tests.aim().gelPointC() - NOT_YET_C;
        return pace.shows()
                && ((forecaster.climbsTooFast(now) && now.levelC() > now.earlierPeakC() + NEW_HEIGHTS_C)
                        || (knownC > thereC && onlySeems(now, thereC)));
    }

    /** Whether that it is there speaks against how it came there. */
    private boolean onlySeems(Signals now, double thereC) {
        double t = now.t();
        return (now.fallingFasterThan(FALLS_PER_MIN_C) && !forecaster.misledUpwards())
                || alarms.foreseenLater(t)
                || tooFast.staysHigh(t, thereC)
                || forecaster.mayTakeLongerThan(TOO_EARLY_S, t, now.trendC());
    }
}
