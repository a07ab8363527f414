package spoonfall.cook.forecast;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.estimate.filter.Ahead;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/**
 * Where the pan was due and how fast it was due to climb, by what was known {@link #KNOWN_S} seconds before: what has come since may be
 * a fault, which drags along what is known. The number is a judgement, no source.
 */
public final class Foreseen {
    /** What was known so long ago a fault has not touched yet. */
    public static final double KNOWN_S = 120;

    private final double waterBoilC;
    private final Track heights = new Track(2 * KNOWN_S);
    private final Track climbs = new Track(2 * KNOWN_S);
    private final Track noises = new Track(2 * KNOWN_S);
    private final Slots slots = new Slots();

    /** {@code waterBoilC} is where plain water boils. */
    public Foreseen(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Forgets the way here. */
    public void forget() {
        heights.clear();
        climbs.clear();
        noises.clear();
    }

    /** Takes note of nothing before some seconds after {@code t}. */
    public void waitUntil(double t) {
        slots.rest(t);
    }

    /** Takes note of what is known, every few seconds; says whether it did. */
    public boolean remember(double t, Forecaster forecaster) {
        if (!slots.begins(t)) {
            return false;
        }
        Optional<Ahead> ahead = forecaster.ahead(KNOWN_S / 60);
        if (ahead.isPresent()) {
            heights.add(t, waterBoilC + ahead.get().riseC());
            climbs.add(t, ahead.get().climbPerMinC());
            noises.add(t, forecaster.noiseC());
        }
        return true;
    }

    /** Since when something was known, as far as that is remembered. */
    public OptionalDouble oldestT() {
        return heights.oldestT();
    }

    /** Where the pan is due at {@code t + KNOWN_S} by what was known at {@code t}, in °C. */
    public OptionalDouble heightC(double t) {
        return heights.valueAt(t);
    }

    /** How fast it is due to climb then, in °C per minute. */
    public OptionalDouble climbPerMinC(double t) {
        return climbs.valueAt(t);
    }

    /** How far readings of some seconds were usually off at {@code t}, in °C; 0 while that is not known. */
    public double noiseC(double t) {
        return noises.valueAt(t).orElse(0);
    }
}
