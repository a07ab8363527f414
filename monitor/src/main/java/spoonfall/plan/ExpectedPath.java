package spoonfall.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.physics.Syrup;

/** The way from the first boil to the setting point: water leaves at a steady rate, and acid inverts sugar evenly on the way. */
final class ExpectedPath {
    private static final int STEPS = 24;

    private ExpectedPath() {}

    /** Points of equal water from the boil to the finish; none if no water has to leave. */
    static List<PathPoint> of(MassBalance balance, double waterOffKg, PlanSetup setup) {
        List<PathPoint> points = new ArrayList<>();
        if (waterOffKg <= 0) {
            return points;
        }
        Optional<Double> rate = setup.hob().map(HobPower::waterKgPerMin);
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double offKg = share * waterOffKg;
            double solids = Math.min(Syrup.MOST_SOLIDS, balance.solubleKg() / (balance.syrupKg() - offKg));
            double temperatureC =
                    setup.waterBoilC() + Syrup.riseC(setup.pressurePa(), solids, share * Syrup.TYPICAL_INVERTED);
            OptionalDouble minutes =
                    rate.map(kgPerMin -> OptionalDouble.of(offKg / kgPerMin)).orElse(OptionalDouble.empty());
            points.add(new PathPoint(offKg, minutes, solids, temperatureC));
        }
        return points;
    }
}
