package spoonfall.kitchen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.hand.HandProbe;
import spoonfall.units.Quantities;

/**
 * A kitchen file: TOML that says what a kitchen has. Everything in it is optional, nothing else is allowed.
 *
 * @param name the kitchen's name
 * @param batch what is being made
 * @param elevationM metres above sea level
 * @param pressurePa air pressure in pascals
 * @param riseC wanted rise above the water boil in °C
 * @param port the page's port
 * @param probes its thermometers, differently named; the cook follows the first
 */
public record KitchenFile(
        Optional<String> name,
        Optional<String> batch,
        Optional<Double> elevationM,
        Optional<Double> pressurePa,
        Optional<Double> riseC,
        OptionalInt port,
        List<NamedSpec> probes) {

    private static final List<String> KEYS = List.of("name", "batch", "elevation", "pressure", "rise", "port", "probe");
    private static final List<String> PROBE_KEYS = Stream.concat(
                    Stream.of("name", "kind", "place"), ProbeSpec.optionNames().stream())
            .toList();
    private static final long LARGEST_BYTES = 64 * 1024;

    /** Keeps a copy of the list. */
    public KitchenFile {
        probes = List.copyOf(probes);
    }

    /** What a probe is called to which nobody gave a name. */
    public static String nameOf(int index) {
        List<String> usual = List.of("pan", "second", "third");
        return index < usual.size() ? usual.get(index) : "probe " + (index + 1);
    }

    /** A file with nothing in it. */
    public static KitchenFile empty() {
        return new KitchenFile(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                List.of());
    }

    /**
     * Reads a kitchen file.
     *
     * @throws IllegalArgumentException with one line naming file, line and key, and the way out
     */
    public static KitchenFile read(Path file) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 64 KiB; a kitchen file never is");
            }
            TomlParseResult toml = Toml.parse(file);
            if (toml.hasErrors()) {
                String first = String.valueOf(toml.errors().get(0).getMessage())
                        .lines()
                        .findFirst()
                        .orElse("");
                TomlPosition at = toml.errors().get(0).position();
                throw new IllegalArgumentException(file + ", line " + at.line() + ": " + first);
            }
            return new Reader(file, toml).kitchen();
        } catch (NoSuchFileException e) {
            throw new IllegalArgumentException("there is no kitchen file " + file, e);
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** Reads the keys of one file; every complaint says where. */
    private record Reader(Path file, TomlTable toml) {
        KitchenFile kitchen() {
            refuseUnknown(toml, KEYS);
            if (toml.contains("elevation") && toml.contains("pressure")) {
                throw complaint(toml, "pressure", "give elevation or pressure, not both");
            }
            return new KitchenFile(
                    text(toml, "name"),
                    text(toml, "batch"),
                    quantity("elevation", Quantities::elevationM),
                    quantity("pressure", Quantities::pressurePa),
                    quantity("rise", Quantities::differenceC),
                    port(),
                    probes());
        }

        private OptionalInt port() {
            Object value = toml.get("port");
            if (value == null) {
                return OptionalInt.empty();
            }
            if (value instanceof Long port && port >= 0 && port <= 65535) {
                return OptionalInt.of(port.intValue());
            }
            throw complaint(toml, "port", "must be a whole number from 0 to 65535, such as 8460");
        }

        private List<NamedSpec> probes() {
            Object value = toml.get("probe");
            if (value == null) {
                return List.of();
            }
            if (!(value instanceof TomlArray tables) || !(tables.isEmpty() || tables.get(0) instanceof TomlTable)) {
                throw complaint(toml, "probe", "must be a table of its own, headed [[probe]]");
            }
            List<NamedSpec> probes = new ArrayList<>();
            for (int i = 0; i < tables.size(); i++) {
                NamedSpec probe = probe(tables.getTable(i), tables.inputPositionOf(i), nameOf(i));
                if (probes.stream().anyMatch(other -> other.name().equals(probe.name()))) {
                    throw complaint(
                            tables.inputPositionOf(i),
                            "probe",
                            "two probes are called " + probe.name() + "; give each a name of its own");
                }
                probes.add(probe);
            }
            return probes;
        }

        private NamedSpec probe(TomlTable probe, TomlPosition at, String usualName) {
            refuseUnknown(probe, PROBE_KEYS);
            Map<String, String> options = new LinkedHashMap<>();
            for (String key : ProbeSpec.optionNames()) {
                Object option = probe.get(key);
                if (option instanceof TomlArray || option instanceof TomlTable) {
                    throw complaint(probe, key, "must be a single value");
                }
                if (option != null) {
                    options.put(key, option.toString());
                }
            }
            String kind = text(probe, "kind").orElse("auto");
            String place = text(probe, "place")
                    .or(() -> kind.equals("hand") ? Optional.of(HandProbe.PLACE) : Optional.empty())
                    .orElseThrow(() -> complaint(at, "probe", "needs a place, such as place = \"/dev/ttyUSB0\""));
            String name = text(probe, "name").orElse(usualName);
            try {
                return new NamedSpec(name, ProbeSpec.of(kind, place, options));
            } catch (IllegalArgumentException e) {
                throw complaint(at, "probe", e.getMessage());
            }
        }

        private Optional<String> text(TomlTable table, String key) {
            Object value = table.get(key);
            if (value == null) {
                return Optional.empty();
            }
            if (value instanceof String text && !text.isBlank() && text.length() <= 200) {
                return Optional.of(text.strip());
            }
            throw complaint(table, key, "must be a text in quotes of 1 to 200 characters");
        }

        private Optional<Double> quantity(String key, Function<String, Double> parse) {
            try {
                return text(toml, key).map(parse);
            } catch (IllegalArgumentException e) {
                String message = String.valueOf(e.getMessage());
                throw message.startsWith(file.toString()) ? e : complaint(toml, key, message);
            }
        }

        private void refuseUnknown(TomlTable table, List<String> known) {
            for (String key : table.keySet()) {
                if (!known.contains(key)) {
                    String nearest = known.stream()
                            .min(Comparator.comparingInt(candidate -> Spelling.distance(key, candidate)))
                            .orElse("");
                    String hint = Spelling.distance(key, nearest) <= 2
                            ? "did you mean " + nearest + "?"
                            : "it can be " + String.join(", ", known);
                    throw complaint(table, key, "is not a key of a kitchen file; " + hint);
                }
            }
        }

        private IllegalArgumentException complaint(TomlTable table, String key, @Nullable String what) {
            return complaint(table.inputPositionOf(List.of(key)), key, what);
        }

        private IllegalArgumentException complaint(@Nullable TomlPosition at, String key, @Nullable String what) {
            String line = at == null ? "" : ", line " + at.line();
            return new IllegalArgumentException(file + line + ": " + key + ": " + what);
        }
    }
}
