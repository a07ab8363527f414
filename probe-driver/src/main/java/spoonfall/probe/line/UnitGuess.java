package spoonfall.probe.line;

import java.util.Optional;

/**
 * The unit of a device that was listened to.
 *
 * @param meaning how its numbers are read
 * @param why which unit, and why, to go on after "in"
 */
record UnitGuess(Meaning meaning, String why) {
    private static final double SURELY_F = 130;
    private static final double SURELY_K = 250;

    /** The unit that the cook gave, else that which the device says, else the one its values allow. */
    static UnitGuess of(Optional<TemperatureUnit> given, Candidates.One one) {
        if (given.isPresent()) {
            return new UnitGuess(Meaning.temperature(given), given.get().sign() + " as you said");
        }
        Optional<TemperatureUnit> named = TemperatureUnit.inName(one.title());
        if (one.unit().isPresent()) {
            return otherwise(one.unit().get(), " as it says");
        }
        if (named.isPresent()) {
            return otherwise(named.get(), " as its name says");
        }
        double middle = middle(one);
        if (middle > SURELY_K) {
            return otherwise(TemperatureUnit.K, ", since no pan is that hot in °C or °F");
        }
        if (middle > SURELY_F) {
            return otherwise(TemperatureUnit.F, ", since no pan of preserve is that hot in °C");
        }
        return otherwise(TemperatureUnit.C, ", since it names no unit (if that is wrong, add unit=F)");
    }

    /** A device with a button for the unit may come to name another one: what stands in the line is believed. */
    private static UnitGuess otherwise(TemperatureUnit unit, String why) {
        return new UnitGuess(Meaning.temperatureElse(unit), unit.sign() + why);
    }

    private static double middle(Candidates.One one) {
        double[] sorted = one.values().stream()
                .mapToDouble(v -> v)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    }
}
