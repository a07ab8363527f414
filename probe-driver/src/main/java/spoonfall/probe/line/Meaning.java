package spoonfall.probe.line;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import spoonfall.probe.Quality;
import spoonfall.probe.sensor.Platinum;
import spoonfall.probe.sensor.Thermistor;
import spoonfall.probe.sensor.Thermocouple;

/**
 * What the number in a line means: a temperature in some unit, or what a sensor itself gives.
 *
 * @param description the same in a few words
 * @param rule how the temperature is found
 */
public record Meaning(String description, Rule rule) {
    /** How the temperature behind a number is found. */
    public interface Rule {
        /**
         * The temperature behind a number.
         *
         * @param value the number
         * @param written the unit written behind it
         * @param others the other values of the same line, by column or field
         */
        LineFormat.Parsed of(double value, Optional<TemperatureUnit> written, Function<String, OptionalDouble> others);
    }

    /** A temperature in {@code unit}; empty takes the unit written behind the number, else °C. */
    public static Meaning temperature(Optional<TemperatureUnit> unit) {
        return new Meaning(
                "in " + unit.map(TemperatureUnit::sign).orElse("the unit it names, else °C"),
                (value, written, others) ->
                        LineFormat.Parsed.of(value, unit.or(() -> written).orElse(TemperatureUnit.C)));
    }

    /** A temperature in the unit written behind it, else in {@code otherwise}. */
    public static Meaning temperatureElse(TemperatureUnit otherwise) {
        return new Meaning(
                "in the unit it names, else " + otherwise.sign(),
                (value, written, others) -> LineFormat.Parsed.of(value, written.orElse(otherwise)));
    }

    /** The resistance of a platinum sensor in ohms. */
    public static Meaning platinum(Platinum sensor, String name) {
        return new Meaning(
                "as ohms of a " + name,
                (value, written, others) -> LineFormat.Parsed.ofSensor(value, sensor.temperatureC(value)));
    }

    /** The voltage of a thermocouple in millivolts; {@code junction} is its cold junction's column or field, in °C. */
    public static Meaning thermocouple(Thermocouple couple, String junction) {
        return new Meaning(
                "as millivolts of a type " + couple + " thermocouple with its cold junction in " + junction,
                (value, written, others) -> {
                    OptionalDouble coldC = others.apply(junction);
                    return coldC.isEmpty()
                            ? LineFormat.Parsed.NONE
                            : LineFormat.Parsed.ofSensor(value, couple.temperatureC(value, coldC.getAsDouble()));
                });
    }

    /** The resistance of a thermistor in ohms. */
    public static Meaning thermistor(Thermistor sensor) {
        return new Meaning(
                "as ohms of a thermistor",
                (value, written, others) -> LineFormat.Parsed.ofSensor(value, sensor.temperatureC(value)));
    }

    /** The counts of a converter across a thermistor below a resistor of {@code seriesOhm} ohms. */
    public static Meaning counts(Thermistor sensor, double fullCounts, double seriesOhm) {
        return new Meaning("as counts of a thermistor", (value, written, others) -> {
            OptionalDouble ohm = Thermistor.ohm(value, fullCounts, seriesOhm);
            return ohm.isEmpty()
                    ? new LineFormat.Parsed(OptionalDouble.empty(), Quality.SENSOR_FAULT)
                    : LineFormat.Parsed.ofSensor(value, sensor.temperatureC(ohm.getAsDouble()));
        });
    }
}
