package spoonfall.probe.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds numbers in text. A digit of a name, as in {@code T1}, is not a number, and neither is a percentage. */
final class Numbers {
    private static final String UNIT = "(?:\\s*(?:°|º|deg(?:rees)?)?\\s*"
            + "(?<unit>℃|℉|(?:[CFKcfk]|(?i:celsius|fahrenheit|kelvin))(?![A-Za-z0-9_])))?";
    private static final Pattern WITH_POINT = pattern("\\.");
    private static final Pattern WITH_COMMA = pattern("[.,]");

    private Numbers() {}

    /**
     * A number in a text.
     *
     * @param value what it is; may be infinite or not a number, as the text said
     * @param unit the unit written behind it
     */
    record Found(double value, Optional<TemperatureUnit> unit) {}

    /** Neither a part of a number nor one that is glued to a name, a sign or another number is taken for one. */
    private static Pattern pattern(String decimal) {
        String value = "[+-]?(?:\\d{1,40}(?:" + decimal + "\\d{1,40})?(?:[eE][+-]?\\d{1,4})?|(?i:nan|inf(?:inity)?))";
        String glued = "[A-Za-z0-9_]*[0-9_]|" + decimal + "\\d|[+-]\\d";
        return Pattern.compile("(?<!" + decimal + "|[A-Za-z0-9_]|[A-Za-z0-9_][+-])(?<value>" + value + ")(?!" + glued
                + ")" + UNIT + "(?![A-Za-z_]|\\s*%)");
    }

    static List<Found> in(String text, boolean decimalComma) {
        List<Found> found = new ArrayList<>();
        Matcher matcher = (decimalComma ? WITH_COMMA : WITH_POINT).matcher(text);
        while (matcher.find()) {
            Optional<TemperatureUnit> unit =
                    Optional.ofNullable(matcher.group("unit")).flatMap(TemperatureUnit::written);
            found.add(new Found(value(matcher.group("value").replace(',', '.')), unit));
        }
        return found;
    }

    private static double value(String text) {
        String bare = text.startsWith("+") || text.startsWith("-") ? text.substring(1) : text;
        if (Character.isLetter(bare.charAt(0))) {
            return Double.NaN;
        }
        return Double.parseDouble(text);
    }
}
