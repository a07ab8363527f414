package spoonfall.plan;

import java.util.List;
import java.util.OptionalDouble;
import spoonfall.physics.Syrup;

/**
 * What a cook showed of its hob: with a known mass of solids, the syrup's thickness says how much water is left, and two
 * thicknesses and the time between them how fast it leaves.
 */
public final class LearntRate {
    /** Below, the temperature hardly says how thick the syrup is; above, the pan is taken off to be tested. */
    private static final double FROM_SOLIDS = 0.50;

    private static final double TO_SOLIDS = 0.60;

    /** So little water left says nothing: the curve's own doubt is as large. */
    private static final double LEAST_CHANGE = 0.12;

    private static final double LEAST_S = 120;
    private static final double MOST_S = 2 * 3600;

    private LearntRate() {}

    /**
     * Where a pan was.
     *
     * @param t seconds
     * @param riseC °C above boiling water
     */
    public record Seen(double t, double riseC) {}

    /**
     * The water that left in a minute of this boil, in kilograms; empty if the climb does not show it.
     *
     * @param climb the cook so far, in order
     * @param pressurePa air pressure at the pan
     * @param solidsKg the solids in it
     */
    public static OptionalDouble kgPerMin(List<Seen> climb, double pressurePa, double solidsKg) {
        double inverted = Syrup.TYPICAL_INVERTED / 2;
        double fromC = Syrup.riseC(pressurePa, FROM_SOLIDS, inverted);
        double toC = Syrup.riseC(pressurePa, TO_SOLIDS, inverted);
        int end = 0;
        while (end < climb.size() && climb.get(end).riseC() < toC) {
            end++;
        }
        if (end == climb.size()) {
            return OptionalDouble.empty();
        }
        int begin = end;
        while (begin > 0 && climb.get(begin - 1).riseC() >= fromC) {
            begin--;
        }
        Seen first = climb.get(begin);
        Seen last = climb.get(end);
        double change = 1 / Syrup.solids(pressurePa, first.riseC(), inverted)
                - 1 / Syrup.solids(pressurePa, last.riseC(), inverted);
        double seconds = last.t() - first.t();
        if (change < LEAST_CHANGE || seconds < LEAST_S || seconds > MOST_S) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(solidsKg * change / (seconds / 60));
    }
}
