package spoonfall.food;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How an amount is measured. Cups, tablespoons and teaspoons are those of the United States: 1/16, 1/256 and 1/768 of a gallon
 * of 231 cubic inches; ounces and pounds are avoirdupois (NIST Handbook 44, Appendix C).
 */
public enum CookUnit {
    /** A US cup, 236.588 mL. */
    CUP("cup", Kind.VOLUME, Gallon.ML / 16, "cups", "c"),
    /** A US tablespoon, 14.787 mL. */
    TABLESPOON("tablespoon", Kind.VOLUME, Gallon.ML / 256, "tablespoons", "tbsp", "tbs"),
    /** A US teaspoon, 4.929 mL. */
    TEASPOON("teaspoon", Kind.VOLUME, Gallon.ML / 768, "teaspoons", "tsp"),
    /** A millilitre. */
    MILLILITRE("mL", Kind.VOLUME, 1, "millilitre", "millilitres", "milliliter", "milliliters"),
    /** A litre. */
    LITRE("L", Kind.VOLUME, 1000, "litre", "litres", "liter", "liters"),
    /** A gram. */
    GRAM("g", Kind.MASS, 1, "gram", "grams", "gramme", "grammes"),
    /** A kilogram. */
    KILOGRAM("kg", Kind.MASS, 1000, "kilogram", "kilograms", "kilo", "kilos"),
    /** An avoirdupois ounce, 28.349523125 g; never a fluid ounce. */
    OUNCE("ounce", Kind.MASS, 453.59237 / 16, "ounces", "oz"),
    /** An avoirdupois pound, 453.59237 g. */
    POUND("pound", Kind.MASS, 453.59237, "pounds", "lb", "lbs"),
    /** One of them, such as one orange. */
    PIECE("piece", Kind.PIECE, 1, "pieces", "whole", "");

    /** What a unit counts. */
    public enum Kind {
        /** Grams. */
        MASS,
        /** Millilitres. */
        VOLUME,
        /** Fruit. */
        PIECE
    }

    /** The US gallon, of which the kitchen's measures are parts. */
    private static final class Gallon {
        /** 231 cubic inches of 2.54³ mL each. */
        static final double ML = 231 * 2.54 * 2.54 * 2.54;
    }

    private final String wireName;
    private final Kind kind;
    private final double size;
    private final List<String> names;

    CookUnit(String wireName, Kind kind, double size, String... others) {
        this.wireName = wireName;
        this.kind = kind;
        this.size = size;
        names = List.of(others);
    }

    /** The name on the wire and for people, such as {@code cup}. */
    public String wireName() {
        return wireName;
    }

    /** What it counts. */
    public Kind kind() {
        return kind;
    }

    /** How many grams, millilitres or pieces it is, after its kind. */
    public double size() {
        return size;
    }

    /**
     * The unit of that name, short or long, one or many.
     *
     * @throws IllegalArgumentException with the names there are
     */
    public static CookUnit named(String text) {
        String asked = text.strip().toLowerCase(Locale.ROOT);
        return find(asked)
                .orElseThrow(() -> new IllegalArgumentException("unknown unit \"" + text.strip() + "\"; it can be "
                        + Arrays.stream(values()).map(CookUnit::wireName).collect(Collectors.joining(", "))));
    }

    /** Whether there is a unit of that name. */
    static boolean known(String text) {
        return find(text.strip().toLowerCase(Locale.ROOT)).isPresent();
    }

    private static Optional<CookUnit> find(String asked) {
        return Arrays.stream(values())
                .filter(unit -> unit.wireName.toLowerCase(Locale.ROOT).equals(asked) || unit.names.contains(asked))
                .findFirst();
    }
}
