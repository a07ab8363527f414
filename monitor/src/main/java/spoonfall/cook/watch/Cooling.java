package spoonfall.cook.watch;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.estimate.standing.Thin;
import spoonfall.series.Peaks;
import spoonfall.series.RobustLine;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/**
 * Sees a pan with sugar in it that has fallen below its height and does not warm again, however slowly it cools and whether or
 * not anything is known of its water. A stir is too short for it, a burner that switches comes back, and something cold in the
 * pan warms again. The numbers are common practice, no source.
 */
final class Cooling {
    private static final double KEEP_S = 900;
    private static final double FALLEN_C = 0.8;
    private static final double FALLEN_STEPS = 1.7;

    /** Less than that below the height and it has not left it yet. */
    private static final double LEFT_C = 0.35;

    private static final double LEFT_STEPS = 0.9;
    private static final double PEAK_S = 600;

    /** So long after it came back nothing is made of other signs that are still late. */
    private static final double BACK_S = 45;

    private static final double WARMS_C = 0.3;
    private static final double WARMS_STEPS = 1.2;

    /** A pan that has warmed again and not fallen lower for so long boils on from another height, as after water was added. */
    private static final double FALLS_PER_MIN_C = 0.1;

    /** A reading that jumped down stays there; a pan that cools goes lower. */
    private static final double NEW_LOW_C = 0.15;

    private static final double NEW_LOW_WITHIN_S = 60;

    /** A pan that comes back is higher than so long before, sooner than any line through its fall turns. */
    private static final double LATELY_S = 20;

    /** One that turns has slowed down to so large a part of its fall by then; off the heat it falls evenly. */
    private static final double SLOWS_PART = 0.45;

    /** Nothing is known of what the pan did while the thermometer was silent for so long. */
    private static final double GAP_S = 25;

    private static final double BOILS_ON_S = 150;

    private final double waterBoilC;
    private final Peaks heights = new Peaks(KEEP_S);
    private final Track lately = new Track(2 * LATELY_S);
    private final Slots slots = new Slots();
    private double peakC = Double.NEGATIVE_INFINITY;
    private double fromC = Double.NaN;
    private double backT = Double.NEGATIVE_INFINITY;
    private double seenT;
    private double resumedT;
    private double leftT;
    private double warmedT;
    private double lowestC;
    private double lowestT;
    private boolean falls;

    /** {@code waterBoilC} is where plain water boils. */
    Cooling(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Forgets the way here. */
    void restart() {
        lately.clear();
        forgetTheHeight();
    }

    /** The readings do not fall from the pan's height: they were hotter. */
    void forgetTheHeight() {
        heights.clear();
        peakC = Double.NEGATIVE_INFINITY;
        fromC = Double.NaN;
    }

    /** Takes note of where the pan is. */
    void endSecond(Signals now, Stages stages) {
        double stepC = now.knownStepC();
        resumedT = now.t() - seenT > GAP_S ? now.t() : resumedT;
        seenT = now.t();
        if (slots.begins(now.t())) {
            heights.add(now.t(), Math.min(now.levelC(), now.trendC()));
            lately.add(now.t(), now.levelC());
            peakC = heights.highestSince(now.t() - PEAK_S, peakC);
        }
        if (low()) {
            follow(now, stepC);
            return;
        }
        double highC = Math.max(now.levelC(), now.trendC());
        if (!stages.boiled()
                || peakC - highC < Math.max(FALLEN_C, FALLEN_STEPS * stepC)
                || peakC - waterBoilC < Thin.READ_C) {
            return;
        }
        fromC = peakC;
        leftT = heights.latestAtLeast(highC + leftC(stepC), now.t());
        lowestC = now.levelC();
        lowestT = now.t();
    }

    private void follow(Signals now, double stepC) {
        if (now.levelC() < lowestC - NEW_LOW_C) {
            lowestC = now.levelC();
            lowestT = now.t();
        }
        warmedT = warms(now, stepC) ? now.t() : warmedT;
        falls = now.t() - lowestT < NEW_LOW_WITHIN_S && falls(now.steady()) && falls(now.quick());
        boolean back = now.levelC() > fromC - leftC(stepC);
        if (back || (warms(now, stepC) && now.t() - lowestT > BOILS_ON_S)) {
            forgetTheHeight();
            backT = now.t();
        }
    }

    private static boolean falls(Optional<RobustLine> line) {
        return line.filter(of -> Signals.perMinute(of) < -FALLS_PER_MIN_C).isPresent();
    }

    private static double leftC(double stepC) {
        return Math.max(LEFT_C, LEFT_STEPS * stepC);
    }

    private boolean warms(Signals now, double stepC) {
        return now.levelC() > lowestC + Math.max(WARMS_C, WARMS_STEPS * stepC);
    }

    /** Whether it is below the height from which it fell. */
    boolean low() {
        return !Double.isNaN(fromC);
    }

    /** For how many seconds it has been cooling without a break; 0 if it does not, or if it stays where it fell to. */
    double forS(Signals now) {
        return low() && falls ? now.t() - Math.max(warmedT, Math.max(leftT, resumedT)) : 0;
    }

    /** Whether it is higher than it was a moment ago, or falls so much more slowly than over two minutes that it soon will be. */
    boolean turns(Signals now) {
        OptionalDouble beforeC = lately.around(now.t() - LATELY_S);
        double fallsPerMinC =
                now.steady().isPresent() ? Signals.perMinute(now.steady().get()) : 0;
        return beforeC.isPresent()
                && (now.levelC() - beforeC.getAsDouble()) * 60 / LATELY_S > Math.min(0, SLOWS_PART * fallsPerMinC);
    }

    /** Whether it warms again, or has just come back. */
    boolean warms(Signals now) {
        boolean back = now.t() - backT < BACK_S;
        return back || (low() && warms(now, now.knownStepC()));
    }
}
