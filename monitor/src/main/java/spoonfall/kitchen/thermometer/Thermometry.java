package spoonfall.kitchen.thermometer;

import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Function;
import spoonfall.cook.WaterBoil;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.SensorClass;

/**
 * What a kitchen needs to know of its thermometers to trust them.
 *
 * @param book where calibrations are kept; empty where there is nothing to calibrate, as in a replay
 * @param identity tells a thermometer by its name from others of its kind, as it is plugged in now; empty if it has
 *     none
 * @param sensorClass class of a thermometer's sensor by its name; empty if nobody said
 * @param declared where water boils by what was said of the kitchen, when the cook rests on a measured boil
 * @param clock the wall clock
 */
public record Thermometry(
        Optional<CalibrationBook> book,
        Function<String, Optional<String>> identity,
        Function<String, Optional<SensorClass>> sensorClass,
        Optional<WaterBoil> declared,
        InstantSource clock) {

    /** Thermometers that are taken at their word. */
    public static Thermometry none() {
        return new Thermometry(
                Optional.empty(),
                name -> Optional.empty(),
                name -> Optional.empty(),
                Optional.empty(),
                InstantSource.system());
    }

    /** The thermometers that were asked for, calibrated by a book. */
    public static Thermometry of(Iterable<NamedSpec> specs, CalibrationBook book, Optional<WaterBoil> declared) {
        return new Thermometry(
                Optional.of(book),
                name -> spec(specs, name).map(spec -> spec.spec().identity()),
                name -> spec(specs, name).flatMap(spec -> spec.spec().sensorClass()),
                declared,
                InstantSource.system());
    }

    private static Optional<NamedSpec> spec(Iterable<NamedSpec> specs, String name) {
        for (NamedSpec spec : specs) {
            if (spec.name().equals(name)) {
                return Optional.of(spec);
            }
        }
        return Optional.empty();
    }
}
