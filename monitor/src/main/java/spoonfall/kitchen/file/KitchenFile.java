package spoonfall.kitchen.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import spoonfall.probe.NamedSpec;
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
 * @param network what it says of the network
 * @param pans its pans, differently named, each with its differently named thermometers; a file that has thermometers
 *     and says nothing of pans has one
 * @param canner the thermometer in the canner
 * @param habits how the kitchen does things
 */
public record KitchenFile(
        Optional<String> name,
        Optional<String> batch,
        Optional<Double> elevationM,
        Optional<Double> pressurePa,
        Optional<Double> riseC,
        OptionalInt port,
        Optional<NetworkEntry> network,
        List<PanEntry> pans,
        Optional<NamedSpec> canner,
        KitchenHabits habits) {

    private static final List<String> KEYS = Stream.concat(
                    Stream.of("name", "batch", "elevation", "pressure", "rise", "port", "network", "pan", "probe"),
                    KitchenHabits.KEYS.stream())
            .toList();

    /** Keeps a copy of the list. */
    public KitchenFile {
        pans = List.copyOf(pans);
    }

    /** The thermometers in its pans, pan by pan. */
    public List<NamedSpec> probes() {
        return pans.stream().flatMap(pan -> pan.probes().stream()).toList();
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
                Optional.empty(),
                List.of(),
                Optional.empty(),
                KitchenHabits.USUAL);
    }

    /**
     * Reads a kitchen file.
     *
     * @throws IllegalArgumentException with one line naming file, line and key, and the way out
     */
    public static KitchenFile read(Path file) {
        return new Reader(KitchenToml.read(file, "there is no kitchen file", "a kitchen file never is")).kitchen();
    }

    /** Reads the keys of one file; every complaint says where. */
    private record Reader(KitchenToml keys) {
        KitchenFile kitchen() {
            keys.refuseUnknown(keys.toml(), KEYS);
            if (keys.toml().contains("elevation") && keys.toml().contains("pressure")) {
                throw keys.complaint(keys.toml(), "pressure", "give elevation or pressure, not both");
            }
            PanTables tables = new PanTables(keys);
            return new KitchenFile(
                    keys.text(keys.toml(), "name"),
                    keys.text(keys.toml(), "batch"),
                    keys.quantity(keys.toml(), "elevation", Quantities::elevationM),
                    keys.quantity(keys.toml(), "pressure", Quantities::pressurePa),
                    keys.quantity(keys.toml(), "rise", Quantities::differenceC),
                    port(),
                    new NetworkTable(keys).entry(),
                    tables.pans(),
                    tables.canner(),
                    KitchenHabits.of(keys));
        }

        private OptionalInt port() {
            Object value = keys.toml().get("port");
            if (value == null) {
                return OptionalInt.empty();
            }
            if (value instanceof Long port && port >= 0 && port <= 65535) {
                return OptionalInt.of(port.intValue());
            }
            throw keys.complaint(keys.toml(), "port", "must be a whole number from 0 to 65535, such as 8460");
        }
    }
}
