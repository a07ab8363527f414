package spoonfall.cook.watch;

import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.estimate.standing.Thin;
import spoonfall.series.Track;

/**
 * Tells a pan into which something cold went: its reading falls within half a minute and then warms again. A pan off the
 * heat falls more slowly and goes on falling; a set test is known by the test window. It is expected back at the boil within
 * some minutes, and said to be late once it is seen that it will not be. The numbers are common practice, no source.
 */
public final class ColdAddition {
    private static final double WITHIN_S = 30;
    private static final double LEAST_FALL_C = 2.5;

    /** The bottom must be reached so soon after the fall was seen. */
    private static final double BOTTOM_WITHIN_S = 40;

    private static final double LOOKS_FOR_S = 150;
    private static final double WARMS_C = 0.5;
    private static final double STEPS = 2;
    private static final double BACK_WITHIN_C = 0.5;
    private static final double LONGEST_S = 900;

    /** What lies lower than that above the water boil does not boil with sugar in it. */
    private static final double BOILS_C = 0.3;

    /** A pan that warms comes up faster than one that boils. */
    private static final double BOILS_PER_MIN_C = 0.8;

    private static final double MINUTE_S = 60;

    /** Something cold that the hob can carry is back by then; a pan that needs longer needs more heat. */
    private static final double LATE_S = 360;

    /** A reading that jumped down by less may go on there, as the pan does where it is. */
    private static final double DEEP_C = 5;

    /** The pace of so many seconds is known so long after the bottom; no burner's pause lasts as long. */
    private static final double PACE_S = 90;

    private static final double PACE_AFTER_S = 120;

    /** What comes no higher meanwhile warms no further. */
    private static final double HIGHER_C = 0.3;

    private static final double HIGHER_STEPS = 1.5;

    private final double waterBoilC;
    private final Track levels = new Track(PACE_S);

    /** No lower than any of the latest levels: they need be looked through only where this is far above the pan. */
    private double atMostC = Double.NEGATIVE_INFINITY;

    private double beforeC = Double.NaN;
    private double fellT;
    private double lowestC;
    private double lowestT;
    private boolean warms;
    private boolean below;
    private boolean late;

    /** {@code waterBoilC} is where plain water boils. */
    public ColdAddition(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Whether something cold went in and the pan, which warms again, is not back yet. */
    public boolean seen() {
        return warms;
    }

    /** Whether that pan stays below the boil for longer than anybody wants, or has done so. */
    public boolean late() {
        return late;
    }

    /** Whether it is still there. */
    public boolean stalls() {
        return late && below;
    }

    /** Forgets the way here. */
    public void restart() {
        levels.clear();
        atMostC = Double.NEGATIVE_INFINITY;
        forget();
    }

    private void forget() {
        beforeC = Double.NaN;
        warms = false;
        late = false;
    }

    private void look(Signals now) {
        atMostC = levels.highestSince(now.t() - WITHIN_S).orElse(now.levelC());
        if (atMostC - now.levelC() >= LEAST_FALL_C) {
            beforeC = atMostC;
            fellT = now.t();
            lower(now);
        }
    }

    /** Takes note of where the pan is. */
    public void endSecond(Signals now, Stages stages) {
        double t = now.t();
        double levelC = now.levelC();
        levels.add(t, levelC);
        atMostC = Math.max(atMostC, levelC);
        if (Double.isNaN(beforeC)) {
            boolean mayCome = stages.stage().boiling() && !stages.reachedWindow();
            if (mayCome && atMostC - levelC >= LEAST_FALL_C) {
                look(now);
            }
            return;
        }
        if (levelC < lowestC) {
            lower(now);
        }
        double enoughC = Math.max(WARMS_C, STEPS * now.knownStepC());
        boolean bottomed = lowestT - fellT <= BOTTOM_WITHIN_S;
        warms = bottomed && (warms || levelC >= lowestC + enoughC);
        // Into a thin pan goes its sugar, which takes long, and who stirs it in knows.
        below = beforeC - waterBoilC >= Thin.READ_C && levelC < waterBoilC + BOILS_C;
        late = warms && (late || (below && comesLate(now)));
        boolean back = levelC >= beforeC - BACK_WITHIN_C || boilsAgain(now, stages);
        if (back || (!stalls() && t - fellT > (warms ? LONGEST_S : LOOKS_FOR_S))) {
            forget();
        }
    }

    /** Whether it boils lower than before, as what was thinned does: it is above water's boil, and warms no more. */
    private boolean boilsAgain(Signals now, Stages stages) {
        double lastMinuteC = now.levelC() - levels.valueAt(now.t() - MINUTE_S).orElse(lowestC);
        return warms
                && now.t() - lowestT >= MINUTE_S
                && stages.stage().boiling()
                && now.levelC() >= waterBoilC + BOILS_C
                && lastMinuteC < Math.max(BOILS_PER_MIN_C, STEPS * now.knownStepC());
    }

    private void lower(Signals now) {
        lowestC = now.levelC();
        lowestT = now.t();
    }

    private boolean comesLate(Signals now) {
        boolean cold = beforeC - lowestC >= DEEP_C;
        return cold && now.t() - lowestT >= PACE_AFTER_S && now.t() - fellT + untilBoilS(now) > LATE_S;
    }

    /** How long it takes to the boil at its pace of late. */
    private double untilBoilS(Signals now) {
        return shortC(now) * PACE_S / Math.max(HIGHER_C, higherC(now));
    }

    private double shortC(Signals now) {
        return waterBoilC + BOILS_C - now.levelC();
    }

    private double higherC(Signals now) {
        return now.levelC() - levels.valueAt(now.t() - PACE_S).orElse(lowestC);
    }

    /** What to say of a pan that comes back late. */
    public AlarmText text(Signals now) {
        boolean higher = higherC(now) >= Math.max(HIGHER_C, HIGHER_STEPS * now.knownStepC());
        return higher
                ? AlarmText.coldAndSlow(fellT, now.t() + untilBoilS(now))
                : AlarmText.coldAndNoWarmer(fellT, shortC(now));
    }
}
