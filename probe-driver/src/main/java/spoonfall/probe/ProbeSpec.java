package spoonfall.probe;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import spoonfall.probe.hand.HandProbe;
import spoonfall.probe.line.JsonLines;
import spoonfall.probe.line.LineFormat;
import spoonfall.probe.line.Meaning;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.line.TextLines;
import spoonfall.probe.modbus.ModbusQuestion;
import spoonfall.probe.scpi.ScpiQuestion;
import spoonfall.probe.serial.AskingLine;
import spoonfall.probe.serial.Question;
import spoonfall.probe.serial.SerialPorts;
import spoonfall.probe.serial.SerialProbe;
import spoonfall.probe.serial.SerialSettings;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;

/**
 * Which probe to open and how, as a cook writes it: {@code KIND:PLACE,option=value,...}, such as {@code
 * auto:/dev/ttyUSB0} or {@code text:/dev/ttyUSB0,baud=115200,column=2,unit=F}; {@code hand} needs no
 * place.
 *
 * @param kind what it is
 * @param place a port's path or a trace's file
 * @param options the rest, checked when the spec is made
 */
public record ProbeSpec(Kind kind, String place, Map<String, String> options) {
    /** What a probe is. */
    public enum Kind {
        /** Listens first and finds out. */
        AUTO,
        /** Lines of text. */
        TEXT,
        /** Lines that are JSON objects. */
        JSON,
        /** An instrument that answers Modbus RTU. */
        MODBUS,
        /** An instrument that answers SCPI queries. */
        SCPI,
        /** A recorded cook. */
        TRACE,
        /** Somebody reads a thermometer and types what it shows. */
        HAND;

        /** The name in a spec, such as {@code auto}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }

        List<String> options() {
            List<String> all = new ArrayList<>();
            if (this != TRACE && this != HAND) {
                all.addAll(SerialOptions.KEYS);
                all.addAll(List.of("unit", "class"));
            }
            if (this == TEXT) {
                all.addAll(List.of("column", "decimal"));
            } else if (this == JSON) {
                all.add("field");
            }
            if (this == SCPI) {
                all.addAll(List.of("ask", "column"));
            }
            if (this == MODBUS) {
                all.addAll(ModbusOptions.KEYS);
            }
            if (this == TEXT || this == JSON) {
                all.addAll(SensorOptions.KEYS);
            }
            return all;
        }

        static Kind named(String name) {
            for (Kind kind : values()) {
                if (kind.wireName().equals(name)) {
                    return kind;
                }
            }
            throw new IllegalArgumentException("unknown kind of probe \"" + name + "\"; it can be " + names());
        }

        private static String names() {
            return Arrays.stream(values()).map(Kind::wireName).collect(Collectors.joining(", "));
        }
    }

    /** Checks the options by building what they describe. */
    public ProbeSpec {
        options = Map.copyOf(options);
        for (String key : options.keySet()) {
            if (!kind.options().contains(key)) {
                throw new IllegalArgumentException("a " + kind.wireName() + " probe has no option \"" + key
                        + "\"; it has " + (kind.options().isEmpty() ? "none" : String.join(", ", kind.options())));
            }
        }
        if (place.isBlank()) {
            throw new IllegalArgumentException(
                    kind == Kind.TRACE
                            ? "a trace probe needs a file, such as trace:cook.csv"
                            : "a probe needs a port, such as " + kind.wireName() + ":/dev/ttyUSB0");
        }
        if (kind == Kind.JSON && options.getOrDefault("field", "").isBlank()) {
            throw new IllegalArgumentException("a json probe needs the field of the temperature, such as field=temp");
        }
        if (kind == Kind.MODBUS) {
            ModbusOptions.register(options);
        }
        if (kind == Kind.SCPI) {
            scpi(options);
        }
        if (kind != Kind.TRACE && kind != Kind.HAND) {
            SerialOptions.settings(kind, place, options);
            unit(options);
            SensorClass.in(options);
            SensorOptions.meaning(options, unit(options));
        }
        String column = options.getOrDefault("column", "1").strip();
        if (column.isEmpty() || column.matches("0+")) {
            throw new IllegalArgumentException("column must be a number from 1 or a name, not \"" + column + "\"");
        }
        String decimal = options.getOrDefault("decimal", "point");
        if (!decimal.equals("point") && !decimal.equals("comma")) {
            throw new IllegalArgumentException("decimal must be point or comma, not \"" + decimal + "\"");
        }
    }

    /**
     * Reads a spec.
     *
     * @throws IllegalArgumentException with one line that names what is wrong and what is allowed
     */
    public static ProbeSpec parse(String text) {
        int colon = text.indexOf(':');
        if (text.strip().equals(Kind.HAND.wireName())) {
            return of(Kind.HAND.wireName(), HandProbe.PLACE, Map.of());
        }
        if (colon < 0) {
            throw new IllegalArgumentException("\"" + text
                    + "\" is not a probe; write a kind and a place, such as auto:/dev/ttyUSB0, or \"hand\" alone");
        }
        String[] parts = text.substring(colon + 1).split(",", -1);
        Map<String, String> options = new LinkedHashMap<>();
        for (int i = 1; i < parts.length; i++) {
            int equals = parts[i].indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException(
                        "\"" + parts[i] + "\" is not an option; write option=value, such as baud=115200");
            }
            String key = parts[i].substring(0, equals).strip();
            if (options.put(key, parts[i].substring(equals + 1).strip()) != null) {
                throw new IllegalArgumentException("the option " + key + " is given twice; keep one of them");
            }
        }
        return new ProbeSpec(Kind.named(text.substring(0, colon).strip()), parts[0].strip(), options);
    }

    /** The names of every option of any kind. */
    public static Set<String> optionNames() {
        Set<String> names = new TreeSet<>();
        for (Kind kind : Kind.values()) {
            names.addAll(kind.options());
        }
        return names;
    }

    /** A spec of a kind by its name, as in {@link #parse}. */
    public static ProbeSpec of(String kind, String place, Map<String, String> options) {
        return new ProbeSpec(Kind.named(kind), place, options);
    }

    /**
     * Makes the probe, not yet started.
     *
     * @param name as the kitchen calls it
     * @param nanoClock the monotonic clock that stamps readings
     * @throws spoonfall.probe.trace.TraceException if a trace cannot be read
     */
    public Probe open(String name, LongSupplier nanoClock) {
        if (kind == Kind.TRACE) {
            return new TraceProbe(name, place, Trace.read(file()), nanoClock);
        }
        if (kind == Kind.HAND) {
            return new HandProbe(name, nanoClock);
        }
        if (kind == Kind.MODBUS || kind == Kind.SCPI) {
            return AskingLine.open(serial(), List.of(new AskingLine.Asked(name, question(true))), nanoClock)
                    .get(0);
        }
        return new SerialProbe(name, serial(), format(), unit(options), nanoClock);
    }

    /** The class of its sensor, where one is given: how far it may be off before it is calibrated. */
    public Optional<SensorClass> sensorClass() {
        return SensorClass.in(options);
    }

    /** How far it may be off in °C at a temperature before it is calibrated: by its class, else by the commonest. */
    public double limitC(double temperatureC) {
        return sensorClass().orElse(SensorClass.K_2).limitC(temperatureC);
    }

    /**
     * What tells this thermometer from others: the stable name of its port where {@code links} has one, else its
     * place; for a Modbus instrument its number on the line too.
     *
     * @param links the folder of links that stay when the system names devices anew
     */
    public String identity(Path links) {
        String device = kind == Kind.TRACE || kind == Kind.HAND ? place : SerialPorts.identity(place, links);
        return kind == Kind.MODBUS ? device + "#" + options.getOrDefault("id", "1") : device;
    }

    /** What tells this thermometer from others on this machine. */
    public String identity() {
        return identity(SerialPorts.STABLE_LINKS);
    }

    /** How its port is opened. */
    SerialSettings serial() {
        return SerialOptions.settings(kind, place, options);
    }

    /** What an instrument is asked that is {@code alone} on its line or not. */
    Question question(boolean alone) {
        return kind == Kind.SCPI
                ? scpi(options)
                : new ModbusQuestion(
                        ModbusOptions.register(options),
                        unit(options).orElse(TemperatureUnit.C),
                        serial().baud(),
                        alone);
    }

    private Optional<LineFormat> format() {
        Meaning meaning = SensorOptions.meaning(options, unit(options));
        return switch (kind) {
            case TEXT ->
                Optional.of(new TextLines(
                        Optional.ofNullable(options.get("column")), meaning, "comma".equals(options.get("decimal"))));
            case JSON -> Optional.of(new JsonLines(options.getOrDefault("field", ""), meaning));
            case AUTO, MODBUS, SCPI, TRACE, HAND -> Optional.empty();
        };
    }

    private static ScpiQuestion scpi(Map<String, String> options) {
        TextLines format = new TextLines(Optional.ofNullable(options.get("column")), unit(options), false);
        return new ScpiQuestion(options.getOrDefault("ask", "MEASure:TEMPerature?"), format);
    }

    private Path file() {
        try {
            return Path.of(place);
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("\"" + place + "\" is not the name of a file", e);
        }
    }

    private static Optional<TemperatureUnit> unit(Map<String, String> options) {
        String text = options.get("unit");
        if (text == null) {
            return Optional.empty();
        }
        return Optional.of(TemperatureUnit.of(text)
                .orElseThrow(() -> new IllegalArgumentException("unit must be C, F or K, not \"" + text + "\"")));
    }
}
