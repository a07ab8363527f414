package spoonfall.plan;

import java.util.Locale;
import java.util.Map;
import spoonfall.units.Quantities;

/**
 * A jar and what it takes.
 *
 * @param name such as {@code half-pint} or {@code 250 mL}
 * @param litres what it is sold as holding, 0.02 to 5
 */
public record Jar(String name, double litres) {
    /** A US half-pint, 236.6 mL: half of 28.875 cubic inches (NIST Handbook 44). */
    public static final Jar HALF_PINT = new Jar("half-pint", 0.2366);

    private static final Map<String, Jar> NAMED = Map.of(
            "quarter-pint", new Jar("quarter-pint", 0.1183),
            "half-pint", HALF_PINT,
            "pint", new Jar("pint", 0.4732),
            "quart", new Jar("quart", 0.9464));

    /** Refuses what is no jar. */
    public Jar {
        if (!(litres >= 0.02 && litres <= 5)) {
            throw new IllegalArgumentException("a jar holds 20mL to 5L, not " + litres + " L");
        }
    }

    /** The jar of that name or size, such as {@code half-pint} or {@code 250mL}. */
    public static Jar of(String text) {
        Jar named = NAMED.get(text.strip().toLowerCase(Locale.ROOT));
        if (named != null) {
            return named;
        }
        try {
            double litres = Quantities.volumeL(text);
            return new Jar(String.format(Locale.ROOT, "%.0f mL", litres * 1000), litres);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "jar \"" + text
                            + "\" is not understood; it can be quarter-pint, half-pint, pint or what it holds, such as 250mL",
                    e);
        }
    }

    /** Many of them, such as {@code half-pint jars} or {@code jars of 250 mL}. */
    public String many() {
        return name.endsWith("mL") ? "jars of " + name : name + " jars";
    }
}
