package spoonfall.cook.watch;

import spoonfall.alarm.Condition;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.estimate.standing.Thin;

/**
 * Decides, once a second, whether what each alarm of the pan warns of is so. Holds what must be remembered
 * to tell: since when it stands off the heat, and where the reading was before it fell.
 */
public final class Watches {
    /** In the test window a pan that cools faster than this stands off the heat for a test. */
    private static final double TESTING_PER_MIN_C = 0.3;

    /** So long may the pan stand off the heat for a test; what is longer is a stall. */
    private static final double SET_TEST_S = 85;

    /** A pan that comes back from a test goes on falling for so long by its thermometer. */
    private static final double TURNS_S = 10;

    /** That a thin pan cools is seen to be a simmer only when it has settled. */
    private static final double SETTLES_S = 240;

    /** Who takes a pan off so close to the setting point may well mean it, and is asked later. */
    private static final double NEARLY_SET_C = 0.4;

    private static final double MAYBE_DONE_S = 180;

    /** Closer than that, or than it climbs in half a minute, it is done, for all that a thermometer can tell. */
    private static final double DONE_C = 0.15;

    private static final double DONE_MIN = 0.55;

    /** The same in the test window, where a plate test is expected and takes its time. */
    private static final double PLATE_TEST_S = 130;

    /** So close below the test window somebody may well begin to test. */
    private static final double NEARLY_IN_THE_WINDOW_C = 0.5;

    /** So far below a gel point that was called it has not come to it. */
    private static final double SURELY_SHORT_C = 0.1;

    private static final double DEADBAND_C = 0.4;

    private CookSettings settings;
    private double offSinceT = Double.NaN;
    private boolean thin;
    private boolean shortNow;
    private boolean shortBefore;
    private double shortC = Double.POSITIVE_INFINITY;
    private double doneC;
    private boolean near;
    private boolean hot;
    private final Cooling cooling;
    private final Scorching scorching;

    /** Of a pan that was not seen yet. */
    public Watches(CookSettings settings) {
        this.settings = settings;
        cooling = new Cooling(settings.waterBoil().temperatureC());
        scorching = new Scorching(settings.waterBoil().temperatureC());
    }

    /** The gel point is another one from now on. */
    public void aim(CookSettings aim) {
        settings = aim;
    }

    /** Somebody tested it and says that it is not set: standing off the heat near the gel point does not mean so. */
    public void notSet() {
        shortC = Double.POSITIVE_INFINITY;
    }

    /** The readings begin anew, as when the probe is back in the pan. */
    public void restart() {
        offSinceT = Double.NaN;
        cooling.restart();
        scorching.restart();
    }

    /** Whether the readings are or were just hotter than the pan: they do not fall from its height, nor stand there. */
    public void hotter(boolean isHotter) {
        hot = isHotter;
        if (hot) {
            cooling.forgetTheHeight();
        }
    }

    /** Whether the pan cools by its readings alone. */
    public boolean cools(Signals signals) {
        return cooling.forS(signals) > 0;
    }

    /** The test window is open and the gel point not yet reached. */
    public Condition startSetTests(Stage stage, Signals signals) {
        if (stage == Stage.TEST_WINDOW) {
            return Condition.PRESENT;
        }
        boolean onTheEdge = stage == Stage.ROLLING_BOIL && signals.trendC() > settings.windowFromC() - DEADBAND_C;
        return onTheEdge ? Condition.UNDECIDED : Condition.ABSENT;
    }

    /** Whether the pan stands off the heat for a set test. To be asked once a second, before {@link #stalled}. */
    public boolean setTest(Stages stages, Signals signals, Forecaster forecaster) {
        Stage stage = stages.stage();
        cooling.endSecond(signals, stages);
        near = stages.reachedWindow() || signals.peakC() > settings.windowFromC() - NEARLY_IN_THE_WINDOW_C;
        boolean cools = signals.fallingFasterThan(TESTING_PER_MIN_C) || forecaster.cools();
        boolean off = stage == Stage.OFF_THE_HEAT || (near && stage.boiling() && !stage.atOrPastGelPoint() && cools);
        if (!off) {
            offSinceT = Double.NaN;
            shortC = Double.POSITIVE_INFINITY;
            return false;
        }
        if (Double.isNaN(offSinceT)) {
            offSinceT = signals.t();
            thin = signals.peakC() - settings.waterBoil().temperatureC() < Thin.READ_C;
            shortC = settings.gelPointC() - signals.peakC();
            double riseC = signals.peakC() - settings.waterBoil().temperatureC();
            doneC = Math.max(
                    DONE_C, DONE_MIN * forecaster.expectedPerMinC(riseC).orElse(0));
        }
        double offS = signals.t() - offSinceT;
        double fellS = cooling.forS(signals); // it fell before it was seen to be off the heat
        if (near) {
            return Math.max(offS, fellS) < PLATE_TEST_S;
        }
        if (thin) {
            return offS < SETTLES_S;
        }
        return Math.max(offS, fellS - TURNS_S) < SET_TEST_S && !forecaster.still();
    }

    /**
     * It has stopped climbing, or cools, before it has set.
     *
     * @param done whether the gel point was called, so that who takes it off the heat means it
     */
    public Condition stalled(Stages stages, Signals signals, boolean setTest, boolean done, Forecaster forecaster) {
        Stage stage = stages.stage();
        if (done || stage.atOrPastGelPoint()) {
            return standsShort(stage, signals, forecaster);
        }
        shortNow = false;
        shortBefore = false;
        boolean maybeDone = shortC < NEARLY_SET_C && signals.t() - offSinceT < MAYBE_DONE_S;
        if (shortC < doneC || maybeDone) {
            return stage == Stage.OFF_THE_HEAT && !maybeDone ? Condition.ABSENT : Condition.UNDECIDED;
        }
        boolean cools = cooling.forS(signals) > (near ? PLATE_TEST_S : SET_TEST_S);
        boolean stands = stage == Stage.OFF_THE_HEAT || (stage.boiling() && forecaster.still()) || cools;
        boolean fell = stage == Stage.OFF_THE_HEAT || cools || forecaster.cools();
        boolean cameDown = hot && !fell; // from where it was hotter
        if (stands && !setTest && !cameDown && !cooling.warms(signals)) {
            boolean turns = fell && cooling.turns(signals); // as from a test that was a long one
            return turns ? Condition.UNDECIDED : Condition.PRESENT;
        }
        return stands || cooling.low() ? Condition.UNDECIDED : Condition.ABSENT;
    }

    /**
     * A pan that stops just short of the gel point is called; one that comes off the heat falls, and this one stands. To be
     * told once: one that is kept there for long goes up and down.
     */
    private Condition standsShort(Stage stage, Signals signals, Forecaster forecaster) {
        boolean stands = stage.boiling() && forecaster.still() && !forecaster.cools() && !hot;
        double belowC = settings.gelPointC() - signals.trendC();
        if (!stands || shortBefore || belowC <= 0 || cooling.low() || cooling.warms(signals)) {
            shortBefore |= shortNow;
            return Condition.ABSENT;
        }
        shortNow |= belowC > SURELY_SHORT_C;
        return belowC > SURELY_SHORT_C ? Condition.PRESENT : Condition.UNDECIDED;
    }

    /**
     * Whether the base catches; to be asked after {@link #stalled}.
     *
     * @param comesBack whether something cold went in, so that it warms up to its boil
     */
    public Condition scorchRisk(Stages stages, Signals signals, Forecaster forecaster, boolean comesBack) {
        return scorching.judge(stages, signals, forecaster, comesBack || cooling.low() || forecaster.still());
    }

    /** What to say of the climb that was judged last. */
    public AlarmText scorchText() {
        return scorching.text();
    }
}
