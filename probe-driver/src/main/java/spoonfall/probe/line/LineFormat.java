package spoonfall.probe.line;

import java.util.OptionalDouble;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** How to find the temperature in a line of text. */
public interface LineFormat {
    /** What a line says. Never throws, whatever the line. */
    Parsed parse(String line);

    /** What is read and in which unit, in a few words. */
    String description();

    /**
     * What a line says.
     *
     * @param temperatureC in °C; present exactly when the quality is {@link Quality#GOOD}
     * @param quality how far to trust it
     */
    record Parsed(OptionalDouble temperatureC, Quality quality) {
        /** A line in which no temperature was found. */
        static final Parsed NONE = new Parsed(OptionalDouble.empty(), Quality.NO_NUMBER);

        /** A number that was found, judged by its value. */
        static Parsed of(double value, TemperatureUnit unit) {
            double temperatureC = unit.toC(value);
            Quality quality = Reading.qualityOf(temperatureC);
            return new Parsed(
                    quality == Quality.GOOD ? OptionalDouble.of(temperatureC) : OptionalDouble.empty(), quality);
        }

        /** What a sensor's own value says; empty for one that it never has. */
        static Parsed ofSensor(double value, OptionalDouble temperatureC) {
            if (!Double.isFinite(value)) {
                return new Parsed(OptionalDouble.empty(), Quality.NOT_FINITE);
            }
            return temperatureC.isPresent()
                    ? of(temperatureC.getAsDouble(), TemperatureUnit.C)
                    : new Parsed(OptionalDouble.empty(), Quality.SENSOR_FAULT);
        }
    }
}
