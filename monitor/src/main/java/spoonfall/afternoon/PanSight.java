package spoonfall.afternoon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;

/**
 * Sees in the pan what moves an afternoon on, each thing once while it lasts. The numbers are common practice, no source.
 */
final class PanSight {
    /** Thinner than this it is fruit in water, which softens; no preserve is boiled from less. A fraction by mass. */
    private static final double SUGAR_IS_IN = 0.30;

    /** A set test takes a minute or two. */
    private static final double LONGER_THAN_A_TEST_S = 180;

    private Optional<Stage> lastStage = Optional.empty();
    private boolean warmed;
    private boolean boils;
    private boolean somethingWentIn;
    private boolean reachedWindow;
    private boolean saidOff;
    private double offSinceT = Double.NaN;

    /** What is seen in {@code status} at second {@code t} of the afternoon that was not before; {@code goesBack} whether a test found it not set yet. */
    List<Mark> look(double t, CookStatus status, boolean goesBack) {
        List<Mark> seen = new ArrayList<>();
        Stage stage = status.stage();
        if (!warmed && stage != Stage.WAITING) {
            warmed = true;
            seen.add(new Mark.Seen(t, Sight.PAN_ON));
        }
        boolean wentIn = status.wentIn() != WentIn.NOTHING;
        if (wentIn && !somethingWentIn) {
            seen.add(new Mark.Seen(t, Sight.SUGAR));
        }
        somethingWentIn = wentIn;
        boolean close = stage == Stage.TEST_WINDOW || stage.atOrPastGelPoint();
        if (stage.boiling() && lastStage.filter(Stage.OFF_THE_HEAT::equals).isPresent()) {
            seen.add(new Mark.Seen(t, close ? Sight.BACK_TO_TEST : Sight.BACK_TO_BOIL));
        }
        boolean thick = close || status.solids().orElse(0) >= SUGAR_IS_IN;
        if (!boils && stage.boiling() && thick) {
            boils = true;
            seen.add(new Mark.Seen(t, Sight.BOIL));
        }
        if (close && !reachedWindow) {
            reachedWindow = true;
            seen.add(new Mark.Seen(t, Sight.WINDOW));
        }
        cooling(t, stage, goesBack, seen);
        if (stage.boiling() || stage == Stage.OFF_THE_HEAT) {
            lastStage = Optional.of(stage);
        }
        return seen;
    }

    private void cooling(double t, Stage stage, boolean goesBack, List<Mark> seen) {
        if (saidOff && goesBack) {
            seen.add(new Mark.Seen(t, Sight.NOT_SET));
        }
        if (stage != Stage.OFF_THE_HEAT || !reachedWindow || goesBack) {
            offSinceT = Double.NaN;
            saidOff = false;
            return;
        }
        if (Double.isNaN(offSinceT)) {
            offSinceT = t;
            seen.add(new Mark.Seen(t, Sight.COOLING));
        }
        if (!saidOff && t - offSinceT >= LONGER_THAN_A_TEST_S) {
            saidOff = true;
            seen.add(new Mark.Seen(offSinceT, Sight.OFF));
        }
    }
}
