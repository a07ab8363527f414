package spoonfall.units;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities with their units. Every method throws {@link IllegalArgumentException} with one line that
 * names the bad value and gives a good one. Conversions are the exact ones of the international foot (0.3048 m),
 * the conventional inch of mercury (3386.389 Pa) and millimetre of mercury (133.3224 Pa).
 */
public final class Quantities {
    private static final Pattern FORM =
            Pattern.compile("\\s*(?<number>[+-]?\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|[+-]?\\d{1,12}(?:\\.\\d{1,12})?)"
                    + "\\s*(?:°|deg)?\\s*(?<unit>[A-Za-z]+)\\s*");
    private static final double LOWEST_M = -430;
    private static final double HIGHEST_M = 5500;
    private static final double LOWEST_PA = 45_000;
    private static final double HIGHEST_PA = 108_500;

    private static final Map<String, Double> METRES = Map.of("m", 1.0, "km", 1000.0, "ft", 0.3048, "feet", 0.3048);
    private static final Map<String, Double> PASCALS = Map.of(
            "pa", 1.0, "hpa", 100.0, "mbar", 100.0, "mb", 100.0, "kpa", 1000.0, "inhg", 3386.389, "mmhg", 133.3224);
    private static final Map<String, Double> SECONDS = Map.of("s", 1.0, "min", 60.0);
    private static final Map<String, Double> KILOWATTS = Map.of("w", 0.001, "kw", 1.0);
    private static final Map<String, Double> LITRES =
            Map.of("l", 1.0, "ml", 0.001, "qt", 0.946352946, "quart", 0.946352946, "quarts", 0.946352946);
    private static final Map<String, Double> KELVINS = Map.of("c", 1.0, "k", 1.0, "f", 1 / 1.8);

    private Quantities() {}

    /**
     * An elevation such as {@code 1240m}, {@code 4068ft} or {@code 1.24km}.
     *
     * @return metres above sea level, -430 (the shore of the Dead Sea) to 5,500 (the highest villages)
     */
    public static double elevationM(String text) {
        double metres = scaled("elevation", text, METRES, "1240m or 4068ft");
        if (!(metres >= LOWEST_M && metres <= HIGHEST_M)) {
            throw new IllegalArgumentException("elevation \"" + text
                    + "\" is not where anyone cooks; it must be -430m to 5500m, such as 1240m or 4068ft");
        }
        return metres;
    }

    /**
     * A pressure at the kitchen itself, not reduced to sea level, such as {@code 898hPa} or {@code 26.5inHg}.
     *
     * @return pascals, 45,000 to 108,500
     */
    public static double pressurePa(String text) {
        double pascals = scaled("pressure", text, PASCALS, "898hPa or 26.5inHg");
        if (!(pascals >= LOWEST_PA && pascals <= HIGHEST_PA)) {
            throw new IllegalArgumentException("pressure \"" + text
                    + "\" is not the air of any kitchen; it must be 450hPa to 1085hPa, such as 898hPa or 26.5inHg");
        }
        return pascals;
    }

    /** A temperature such as {@code 95.6C} or {@code 204.1F}; returns °C. */
    public static double temperatureC(String text) {
        double kelvins = scaled("temperature", text, KELVINS, "95.6C or 204.1F");
        String unit = text.strip().toUpperCase(Locale.ROOT);
        if (unit.endsWith("F")) {
            return kelvins - 32 / 1.8;
        }
        return unit.endsWith("K") ? kelvins - 273.15 : kelvins;
    }

    /** A difference of temperatures such as {@code 8F} or {@code 4.4C}; returns °C. */
    public static double differenceC(String text) {
        return scaled("temperature difference", text, KELVINS, "8F or 4.4C");
    }

    /** A time such as {@code 60s} or {@code 2min}, above 0 and up to an hour; returns seconds. */
    public static double durationS(String text) {
        double seconds = scaled("time", text, SECONDS, "60s or 2min");
        if (!(seconds > 0 && seconds <= 3600)) {
            throw new IllegalArgumentException("time \"" + text + "\" must be above 0 and up to 60min, such as 60s");
        }
        return seconds;
    }

    /** A power such as {@code 2kW} or {@code 1800W}; returns kilowatts, 0.1 to 20. */
    public static double powerKw(String text) {
        double kilowatts = scaled("power", text, KILOWATTS, "2kW or 1800W");
        if (!(kilowatts >= 0.1 && kilowatts <= 20)) {
            throw new IllegalArgumentException("power \"" + text + "\" is that of no hob; it must be 100W to 20kW");
        }
        return kilowatts;
    }

    /** A volume such as {@code 8L} or {@code 8qt} (US quarts); returns litres, 0.02 to 200. */
    public static double volumeL(String text) {
        double litres = scaled("volume", text, LITRES, "8L or 8qt");
        if (!(litres >= 0.02 && litres <= 200)) {
            throw new IllegalArgumentException("volume \"" + text + "\" must be 20mL to 200L, such as 8L or 8qt");
        }
        return litres;
    }

    /** A positive factor such as {@code 20}, {@code 20x} or {@code 0.5}. */
    public static double factor(String text) {
        String bare = text.strip().toLowerCase(Locale.ROOT);
        String number = bare.endsWith("x") ? bare.substring(0, bare.length() - 1) : bare;
        try {
            double factor = Double.parseDouble(number);
            if (factor > 0 && factor <= 10_000) {
                return factor;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(notAFactor(text), e);
        }
        throw new IllegalArgumentException(notAFactor(text));
    }

    private static String notAFactor(String text) {
        return "speed \"" + text + "\" must be a number above 0 and up to 10000, such as 20";
    }

    private static double scaled(String what, String text, Map<String, Double> units, String example) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            boolean bare = text.strip().matches("[+-]?[\\d.,]+");
            throw new IllegalArgumentException(what + " \"" + text + "\" "
                    + (bare ? "needs a unit" : "is not understood") + "; write it like " + example);
        }
        Double scale = units.get(matcher.group("unit").toLowerCase(Locale.ROOT));
        if (scale == null) {
            throw new IllegalArgumentException(what + " \"" + text + "\" has the unknown unit " + matcher.group("unit")
                    + "; write it like " + example);
        }
        return Double.parseDouble(matcher.group("number").replace(",", "")) * scale;
    }
}
