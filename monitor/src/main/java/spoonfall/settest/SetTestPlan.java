package spoonfall.settest;

/**
 * Where to test next, by the wanted rise and all that was seen so far. Immutable.
 *
 * <p>The shares are chosen so that four preserves in five are at their set by the second test and fewer than one in ten
 * ends more than half a degree past it: docs/decisions/007-set-tests.md.
 */
public final class SetTestPlan {
    /** The first test comes where so many preserves are set already: few of them are much past it by then. */
    private static final double FIRST_SHARE = 0.23;

    /** Every later one comes where so many are set of those that were not: most, but not so many that most are past it. */
    private static final double NEXT_SHARE = 0.6;

    /** But no further than {@link #SPOILT_C} past the rise at which so few of them are set. */
    private static final double SPOILT_SHARE = 0.1;

    private static final double SPOILT_C = 0.5;

    /** A test teaches nothing where the last one was; so far it goes on at least. */
    private static final double LEAST_STEP_C = 0.1;

    /** Where so few preserves are set, a test that finds it short of that teaches nothing. */
    private static final double TOO_EARLY_SHARE = 0.02;

    private final SettingRise belief;
    private final double nextRiseC;
    private final int tests;

    private SetTestPlan(SettingRise belief, double nextRiseC, int tests) {
        this.belief = belief;
        this.nextRiseC = nextRiseC;
        this.tests = tests;
    }

    /** The plan before any test, for a preserve that should set {@code wantedC} above boiling water. */
    public static SetTestPlan of(double wantedC) {
        SettingRise belief = SettingRise.about(wantedC);
        return new SetTestPlan(belief, belief.quantileC(FIRST_SHARE), 0);
    }

    /**
     * The plan after a test. One that found it set leaves the next rise where it was tested, and one that came too early to teach
     * anything leaves the plan as it was.
     *
     * @param riseC how far above boiling water the pan was, in °C
     */
    public SetTestPlan tested(double riseC, TestStep step) {
        if (!Double.isFinite(riseC)) {
            throw new IllegalArgumentException("a rise must be a number, not " + riseC);
        }
        if (step != TestStep.SET && riseC < belief.quantileC(TOO_EARLY_SHARE)) {
            return this;
        }
        SettingRise next = belief.after(riseC, step);
        double wantC = Math.min(next.quantileC(NEXT_SHARE), next.quantileC(SPOILT_SHARE) + SPOILT_C);
        double nextC = step == TestStep.SET ? riseC : Math.max(wantC, riseC + LEAST_STEP_C);
        return new SetTestPlan(next, nextC, tests + 1);
    }

    /** The rise above boiling water in °C at which to test next. */
    public double nextRiseC() {
        return nextRiseC;
    }

    /** How many tests it has learnt from. */
    public int tests() {
        return tests;
    }
}
