package spoonfall.kitchen.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spoonfall.probe.NamedSpec;

/**
 * A pan of a kitchen file.
 *
 * @param name its name, in addresses and on the page
 * @param batch what is being made in it; empty if nobody said
 * @param riseC wanted rise above the water boil in °C; empty for the usual one
 * @param probes the thermometers in it, in the file's order; the cook follows the first
 */
public record PanEntry(String name, Optional<String> batch, Optional<Double> riseC, List<NamedSpec> probes) {
    /** What the pan is called where there is only one. */
    public static final String ONLY = "pan";

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} '._-]{0,39}");

    /** Validates the name, which becomes part of addresses, and keeps a copy of the list. */
    public PanEntry {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("a pan's name is 1 to 40 letters, digits, spaces, dots, hyphens, "
                    + "underlines or apostrophes and begins with a letter or a digit, unlike \"" + name + "\"");
        }
        probes = List.copyOf(probes);
    }

    /** The same pan with one more thermometer in it. */
    PanEntry with(NamedSpec probe) {
        List<NamedSpec> more = Stream.concat(probes.stream(), Stream.of(probe)).toList();
        return new PanEntry(name, batch, riseC, more);
    }
}
