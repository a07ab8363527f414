package spoonfall.cook;

import java.util.OptionalDouble;
import spoonfall.alarm.Condition;

/**
 * Decides, once a second, whether what each alarm of the pan warns of is so. Holds what must be remembered
 * to tell: how fast it climbed before, and where the reading was before it fell.
 */
final class Watches {
    /** Below this rise the curve is so flat that a quiet thermometer means nothing (about 46 % solids). */
    private static final double DILUTE_RISE_C = 1.6;

    /** The slow line must lie within the boil, and beyond its first minute. */
    private static final double STALL_SETTLE_S = 60;

    private static final double STALL_SHARE = 0.25;
    private static final double STALL_LEAST_PER_MIN_C = 0.015;
    private static final double REFERENCE_S = 900;

    /** In the test window a pan that cools faster than this stands off the heat for a test. */
    private static final double TESTING_PER_MIN_C = 0.3;

    private static final double SCORCH_SETTLE_S = 180;
    private static final double SCORCH_TIMES = 3;
    private static final double SCORCH_LEAST_PER_MIN_C = 0.6;

    /** A climb of so many of the thermometer's steps a minute is more than one step seen in a short while. */
    private static final double SCORCH_STEPS = 4;

    private static final double NEW_HEIGHTS_C = 0.3;
    private static final double REFERENCE_DELAY_S = 60;

    private static final double DEADBAND_C = 0.4;
    private static final double OUT_FALL_C = 15;
    private static final double BACK_WITHIN_C = 2;

    private final CookSettings settings;
    private final Track climbs = new Track(REFERENCE_S);
    private final Track expected = new Track(REFERENCE_S);
    private OptionalDouble beforeFallC = OptionalDouble.empty();

    Watches(CookSettings settings) {
        this.settings = settings;
    }

    /** The test window is open and the gel point not yet reached. */
    Condition startSetTests(Stage stage, Signals signals) {
        if (stage == Stage.TEST_WINDOW) {
            return Condition.PRESENT;
        }
        boolean near = stage == Stage.ROLLING_BOIL && signals.trendC() > settings.windowFromC() - DEADBAND_C;
        return near ? Condition.UNDECIDED : Condition.ABSENT;
    }

    /** It climbs much less than it did, or cools, short of the test window. */
    Condition stalled(Stages stages, Signals signals) {
        Stage stage = stages.stage();
        if (stage == Stage.OFF_THE_HEAT) {
            return Condition.when(!stages.reachedWindow());
        }
        if (!stage.boiling() || stage.atOrPastGelPoint()) {
            return Condition.ABSENT;
        }
        if (signals.slow().isEmpty()) {
            return Condition.UNDECIDED;
        }
        double perMinC = Signals.perMinute(signals.slow().get());
        double riseC = signals.levelC() - settings.waterBoil().temperatureC();
        double settleS = STALL_SETTLE_S + 60 * signals.slowMinutes();
        if (riseC < DILUTE_RISE_C || stages.boilingForS(signals.t()) < settleS) {
            return Condition.ABSENT;
        }
        if (stages.reachedWindow() && signals.fallingFasterThan(TESTING_PER_MIN_C)) {
            return Condition.UNDECIDED;
        }
        climbs.add(signals.t(), perMinC);
        double before = climbs.highestSince(signals.t() - REFERENCE_S).orElse(0);
        if (before * signals.slowMinutes() < signals.stepsToSee() * signals.stepC()) {
            return Condition.UNDECIDED; // at this pace the thermometer would hardly have moved anyway
        }
        double limit = Math.max(STALL_SHARE * before, STALL_LEAST_PER_MIN_C);
        return Condition.above(-perMinC, -limit, limit);
    }

    /** It climbs to new heights faster than water could be leaving. */
    Condition scorchRisk(Stages stages, Signals signals, Forecaster forecaster) {
        double t = signals.t();
        double riseC = signals.levelC() - settings.waterBoil().temperatureC();
        if (!stages.stage().boiling() || stages.boilingForS(t) < SCORCH_SETTLE_S) {
            expected.clear();
            return Condition.ABSENT;
        }
        OptionalDouble reference = expected.valueAt(t - REFERENCE_DELAY_S);
        forecaster.expectedPerMinC(riseC).ifPresent(perMinC -> expected.add(t, perMinC));
        if (reference.isEmpty() || signals.quick().isEmpty() || signals.slow().isEmpty()) {
            return Condition.UNDECIDED;
        }
        double oneStepPerMinC = SCORCH_STEPS * signals.stepC();
        double least = Math.max(SCORCH_LEAST_PER_MIN_C, oneStepPerMinC);
        double limit = Math.max(SCORCH_TIMES * reference.getAsDouble(), least);
        Condition tooFast = Condition.above(Signals.perMinute(signals.quick().get()), limit, limit / 2);
        // After a stir the reading climbs as fast, but only back to where it was.
        boolean newHeights = signals.levelC() > signals.earlierPeakC() + reference.getAsDouble() + NEW_HEIGHTS_C;
        return tooFast == Condition.PRESENT && !newHeights ? Condition.UNDECIDED : tooFast;
    }

    /** The reading fell as no pan can cool, and has not come back. */
    Condition probeOutOfPan(Stage stage, Signals signals) {
        if (beforeFallC.isEmpty()) {
            boolean fell = signals.fallC() >= OUT_FALL_C && stage != Stage.WAITING && stage != Stage.WARMING;
            if (!fell) {
                return Condition.ABSENT;
            }
            beforeFallC = OptionalDouble.of(signals.levelC() + signals.fallC());
        }
        if (signals.levelC() < beforeFallC.getAsDouble() - BACK_WITHIN_C) {
            return Condition.PRESENT;
        }
        beforeFallC = OptionalDouble.empty();
        return Condition.ABSENT;
    }
}
