package spoonfall.cook.forecast;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import spoonfall.cook.Forecast;
import spoonfall.cook.signal.Signals;
import spoonfall.estimate.standing.Thin;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/**
 * Sees a pan that stood off the heat and now warms again: until it boils where it boiled before no water leaves, and what was
 * known of it waits. How long the rest of the way takes the warming itself tells; before it warms, what is foreseen is foreseen of a pan
 * that gets its heat back now, as long as it may be off for a test. The numbers are judgements, no source.
 */
public final class WayBack {
    private static final double OVER_S = 25;

    /** At first it warms faster and faster, and the last seconds tell more. */
    private static final double LATELY_S = 12;

    /** Less below its height a pan boils on, or was stirred. */
    private static final double FALLEN_C = 0.9;

    private static final double FALLEN_STEPS = 2;
    private static final double BACK_C = 0.25;

    /** Once back it takes the others so long to be sure of it. */
    private static final double SETTLES_S = 60;

    /** What comes back this much higher is another pan. */
    private static final double HIGHER_C = 0.6;

    private static final double TURNED_C = 0.5;
    private static final double TURNED_STEPS = 1.5;

    /** Slower than that no hob warms a pan. */
    private static final double WARMS_PER_MIN_C = 1.2;

    private static final double LONGEST_S = 600;

    /** The last of the way is slower, or the hob not yet hot: the moment of the boil is known to such parts of the way. */
    private static final double SOONER = 0.3;

    private static final double LATER = 0.7;

    /** A set test is over by then. */
    private static final double TEST_S = 150;

    /** It takes the hob so long to be hot again. */
    private static final double HOB_S = 15;

    /** Of the heat that boils a pan so much warms it: its base, too, and steam leaves it already. */
    private static final double WARMS_PART = 0.7;

    private final double waterBoilC;
    private final Track points = new Track(2 * OVER_S);
    private final Slots slots = new Slots();
    private double lowestC = Double.NaN;
    private double atT;
    private double untilBoilS = Double.NaN;
    private double backT = Double.NaN;
    private double fellT;
    private double onceWarmS = Double.NaN;

    /** {@code waterBoilC} is where plain water boils. */
    public WayBack(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Forgets the way here. */
    public void restart() {
        points.clear();
        lowestC = Double.NaN;
        untilBoilS = Double.NaN;
        backT = Double.NaN;
        onceWarmS = Double.NaN;
    }

    /**
     * Takes note of where the pan is.
     *
     * @param boiledAtC where it boiled until it fell, and will boil again; empty if that is not known
     * @param warmsPerMinC how fast it will warm by the heat that is known of it
     */
    public void endSecond(Signals now, OptionalDouble boiledAtC, DoubleSupplier warmsPerMinC) {
        double boilC = boiledAtC.orElse(Double.NEGATIVE_INFINITY);
        double levelC = now.levelC();
        double stepC = now.knownStepC();
        boolean known = boilC - waterBoilC >= Thin.READ_C && levelC < boilC + HIGHER_C;
        if (!known || (levelC > boilC - BACK_C && !arrives(now.t()))) {
            restart();
            return;
        }
        if (levelC > boilC - BACK_C) {
            return;
        }
        if (Double.isNaN(lowestC) && boilC - levelC < Math.max(FALLEN_C, FALLEN_STEPS * stepC)) {
            return;
        }
        fellT = Double.isNaN(lowestC) ? now.t() : fellT;
        lowestC = Double.isNaN(lowestC) ? levelC : Math.min(lowestC, levelC);
        if (!slots.begins(now.t())) {
            return;
        }
        points.add(now.t(), levelC);
        boolean turned = levelC > lowestC + Math.max(TURNED_C, TURNED_STEPS * stepC);
        double perMinC = Math.max(perMinC(now.t(), OVER_S), perMinC(now.t(), LATELY_S));
        boolean warms = turned && perMinC > WARMS_PER_MIN_C;
        atT = now.t();
        untilBoilS = warms ? Math.min(LONGEST_S, 60 * (boilC - levelC) / perMinC) : Double.NaN;
        double heatPerMinC = WARMS_PART * warmsPerMinC.getAsDouble();
        boolean tested = !warms && atT - fellT < TEST_S && heatPerMinC > WARMS_PER_MIN_C;
        onceWarmS = tested ? HOB_S + 60 * (boilC - levelC) / heatPerMinC : Double.NaN;
    }

    private double perMinC(double t, double overS) {
        return points.lineSince(t - overS, t, Optional.empty())
                .map(Signals::perMinute)
                .orElse(0.0);
    }

    /** Whether it is back from its way, and has been so for no longer than it takes to be seen. */
    private boolean arrives(double t) {
        if (Double.isNaN(backT) && warms()) {
            backT = t;
            atT = t;
            untilBoilS = 0;
        }
        return t - backT < SETTLES_S;
    }

    /** Whether it warms, or has just come back. */
    public boolean warms() {
        return !Double.isNaN(untilBoilS);
    }

    /** Whether it warms, has just come back, or may be off the heat for a test. */
    public boolean tells() {
        return warms() || !Double.isNaN(onceWarmS);
    }

    /** When the gel point will be reached, if {@code onceBack} tells that of a pan that is back at the boil. */
    public Optional<Forecast> forecast(double t, Optional<Forecast> onceBack) {
        if (!tells()) {
            return Optional.empty();
        }
        double untilS =
                warms() ? untilBoilS - (t - atT) : onceWarmS; // negative once it is back: the pan goes on meanwhile
        double doubtS = Math.max(0, untilS);
        return onceBack.map(then -> new Forecast(
                Math.max(0, then.windowS() + untilS),
                Math.max(0, then.etaS() + untilS),
                Math.max(0, then.lowS() + untilS - SOONER * doubtS),
                Math.max(0, then.highS() + untilS + LATER * doubtS),
                then.perMinute()));
    }
}
