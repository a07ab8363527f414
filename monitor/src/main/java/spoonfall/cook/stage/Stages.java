package spoonfall.cook.stage;

import spoonfall.cook.CookSettings;
import spoonfall.cook.PastGelPoint;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;

/**
 * Tells where a cook is, from the signals alone. Every threshold has a deadband and every change must last,
 * so that bubbles do not make it flicker. The numbers are common practice, no source.
 */
public final class Stages {
    private static final double BOILS_ABOVE_C = 0.3;
    private static final double BOIL_ENDS_BELOW_C = -0.5;
    private static final double COMING_ABOVE_C = -8;
    private static final double SIMMER_ABOVE_C = -12;
    private static final double SIMMER_RATE_PER_MIN_C = 0.3;
    private static final double DEADBAND_C = 0.4;
    private static final double COOLED_C = 2;
    private static final double COOLING_PER_MIN_C = 0.5;
    private static final double BACK_SETTLE_S = 25;
    private static final double FALLING_PER_MIN_C = 0.3;

    /** A pan off the heat goes on cooling: one that holds its height after a fall boils on, and the reading has jumped. */
    private static final double COOLS_AT_LEAST_PER_MIN_C = -0.15;

    private CookSettings settings;
    private Stage stage = Stage.WAITING;
    private Stage candidate = Stage.WAITING;
    private double candidateSinceT;
    private boolean boiled;
    private boolean reachedWindow;
    private boolean wasClose;
    private double boilingSinceT;
    private Stage beforeTheEnd = Stage.WAITING;

    /** Of a pan that was not seen yet. */
    public Stages(CookSettings settings) {
        this.settings = settings;
    }

    /** Where the cook is. */
    public Stage stage() {
        return stage;
    }

    /** Whether it ever boiled. */
    public boolean boiled() {
        return boiled;
    }

    /** Whether the test window of the gel point that it is after now was ever reached. */
    public boolean reachedWindow() {
        return reachedWindow;
    }

    /** Whether that of any gel point was: a test that finds it short of its set moves that, and not the pan. */
    public boolean wasClose() {
        return wasClose;
    }

    /** The gel point is another one from now on: where the pan stands is judged anew. Returns whether the stage changed. */
    public boolean aim(CookSettings aim) {
        settings = aim;
        reachedWindow = false;
        return become(stage.boiling() ? Stage.ROLLING_BOIL : stage);
    }

    /** The boil is over, whatever the readings do. Returns whether the stage changed. */
    public boolean end() {
        beforeTheEnd = stage;
        return become(Stage.OFF_THE_HEAT);
    }

    /** It was not over after all. Returns whether the stage changed. */
    public boolean goOn() {
        return become(beforeTheEnd);
    }

    private boolean become(Stage next) {
        boolean changes = next != stage;
        stage = next;
        candidate = next;
        return changes;
    }

    /** For how many seconds it has been boiling without a break. */
    public double boilingForS(double t) {
        return stage.boiling() ? t - boilingSinceT : 0;
    }

    /** Takes note of the signals and returns whether the stage changed. */
    public boolean follow(Signals signals) {
        Stage next = stageOf(signals);
        if (stage.boiling()
                && next.boiling()
                && next.compareTo(stage) < 0
                && signals.fallingFasterThan(FALLING_PER_MIN_C)) {
            next = stage; // it cools: where to is seen soon, and it did not go back a stage by boiling
        }
        if (next != candidate) {
            candidate = next;
            candidateSinceT = signals.t();
        }
        boolean back = candidate.boiling() && stage.boiling() && candidate.compareTo(stage) < 0;
        double settleS = back ? BACK_SETTLE_S : settleS(candidate);
        if (candidate == stage || signals.t() - candidateSinceT < settleS) {
            return false;
        }
        if (candidate.boiling() && !stage.boiling()) {
            boilingSinceT = signals.t();
        }
        stage = candidate;
        boiled |= stage.boiling();
        reachedWindow |= stage == Stage.TEST_WINDOW || stage.atOrPastGelPoint();
        wasClose |= reachedWindow;
        return true;
    }

    private static double settleS(Stage next) {
        return switch (next) {
            case ROLLING_BOIL, OFF_THE_HEAT -> 20;
            case SIMMERING -> 60;
            case WARMING, COMING_TO_THE_BOIL -> 5;
            default -> 3;
        };
    }

    private Stage stageOf(Signals signals) {
        double riseC = signals.trendC() - settings.waterBoil().temperatureC();
        if (boiled && cooling(signals)) {
            return Stage.OFF_THE_HEAT;
        }
        if (signals.trendC() >= threshold(settings.gelPointC() + PastGelPoint.MARGIN_C, Stage.PAST_GEL_POINT)) {
            return Stage.PAST_GEL_POINT;
        }
        if (signals.trendC() >= threshold(settings.gelPointC(), Stage.AT_GEL_POINT)) {
            return Stage.AT_GEL_POINT;
        }
        if (signals.trendC() >= threshold(settings.windowFromC(), Stage.TEST_WINDOW)) {
            return Stage.TEST_WINDOW;
        }
        if (riseC >= (stage.boiling() ? BOIL_ENDS_BELOW_C : BOILS_ABOVE_C)) {
            return Stage.ROLLING_BOIL;
        }
        return belowTheBoil(signals, riseC);
    }

    private static Stage belowTheBoil(Signals signals, double riseC) {
        if (simmers(signals, riseC)) {
            return Stage.SIMMERING;
        }
        return riseC >= COMING_ABOVE_C ? Stage.COMING_TO_THE_BOIL : Stage.WARMING;
    }

    /** Whether it stays a little below the boil, as no pan does that is off the heat. */
    private static boolean simmers(Signals signals, double riseC) {
        boolean steady = signals.steady()
                .filter(line -> Math.abs(Signals.perMinute(line)) <= SIMMER_RATE_PER_MIN_C)
                .isPresent();
        return steady && riseC >= SIMMER_ABOVE_C;
    }

    private boolean cooling(Signals signals) {
        if (stage == Stage.OFF_THE_HEAT) {
            boolean coolsNoMore = signals.quick()
                    .filter(line -> Signals.perMinute(line) > COOLS_AT_LEAST_PER_MIN_C)
                    .isPresent();
            return !coolsNoMore
                    && !simmers(signals, signals.trendC() - settings.waterBoil().temperatureC());
        }
        return signals.peakC() - signals.levelC() >= COOLED_C && signals.fallingFasterThan(COOLING_PER_MIN_C);
    }

    /** A stage's limit in °C, lower by the deadband for who is in that stage or beyond it. */
    private double threshold(double limitC, Stage of) {
        boolean inside = stage.boiling() && stage.compareTo(of) >= 0;
        return inside ? limitC - DEADBAND_C : limitC;
    }
}
