package spoonfall.probe;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoonfall.probe.line.Meaning;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.sensor.Platinum;
import spoonfall.probe.sensor.Thermistor;
import spoonfall.probe.sensor.Thermocouple;

/** The options of a probe whose numbers are a sensor's own: ohms, millivolts or counts. */
final class SensorOptions {
    static final List<String> KEYS =
            List.of("sensor", "junction", "ohm25", "beta", "sha", "shb", "shc", "full", "series");

    private static final double OHM_25 = 10_000;
    private static final double BETA_K = 3950;

    private SensorOptions() {}

    /**
     * What the numbers mean.
     *
     * @throws IllegalArgumentException with one line naming the option and what is allowed
     */
    static Meaning meaning(Map<String, String> options, Optional<TemperatureUnit> unit) {
        String sensor = options.get("sensor");
        if (sensor == null) {
            KEYS.stream().filter(options::containsKey).findFirst().ifPresent(key -> {
                throw new IllegalArgumentException("option " + key + " needs a sensor, such as sensor=ntc");
            });
            String name = options.getOrDefault("field", options.getOrDefault("column", ""));
            Optional<TemperatureUnit> named = unit.isPresent() ? Optional.empty() : TemperatureUnit.inName(name);
            return named.map(Meaning::temperatureElse).orElseGet(() -> Meaning.temperature(unit));
        }
        if (unit.isPresent()) {
            throw new IllegalArgumentException("give sensor or unit, not both: a sensor's numbers are no temperatures");
        }
        return switch (sensor) {
            case "pt100" -> Meaning.platinum(new Platinum(100), "Pt100");
            case "pt1000" -> Meaning.platinum(new Platinum(1000), "Pt1000");
            case "k" -> Meaning.thermocouple(Thermocouple.K, junction(options));
            case "t" -> Meaning.thermocouple(Thermocouple.T, junction(options));
            case "j" -> Meaning.thermocouple(Thermocouple.J, junction(options));
            case "ntc" -> thermistor(options);
            default ->
                throw new IllegalArgumentException(
                        "sensor must be pt100, pt1000, k, t, j or ntc, not \"" + sensor + "\"");
        };
    }

    private static String junction(Map<String, String> options) {
        String junction = options.get("junction");
        if (junction == null) {
            throw new IllegalArgumentException(
                    "a thermocouple needs its cold junction's column or field in °C, such as junction=2");
        }
        return junction;
    }

    private static Meaning thermistor(Map<String, String> options) {
        boolean steinhart = options.containsKey("sha") || options.containsKey("shb") || options.containsKey("shc");
        Thermistor thermistor = steinhart
                ? new Thermistor(needed(options, "sha"), needed(options, "shb"), needed(options, "shc"))
                : Thermistor.ofBeta(
                        number(options, "ohm25").orElse(OHM_25),
                        number(options, "beta").orElse(BETA_K));
        if (!options.containsKey("full") && !options.containsKey("series")) {
            return Meaning.thermistor(thermistor);
        }
        double full = needed(options, "full");
        double series = needed(options, "series");
        if (!(full >= 1) || !(series >= 1)) {
            throw new IllegalArgumentException("full and series must be 1 or more, such as full=4095,series=10000");
        }
        return Meaning.counts(thermistor, full, series);
    }

    private static double needed(Map<String, String> options, String key) {
        return number(options, key)
                .orElseThrow(() -> new IllegalArgumentException("the option " + key + " is needed here too"));
    }

    private static Optional<Double> number(Map<String, String> options, String key) {
        String text = options.get(key);
        if (text == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(key + " must be a number, not \"" + text + "\"", e);
        }
    }
}
