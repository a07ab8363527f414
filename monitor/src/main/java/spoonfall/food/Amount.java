package spoonfall.food;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * So much of something.
 *
 * @param number how many units, above 0
 * @param unit of what
 */
public record Amount(double number, CookUnit unit) {
    private static final double MOST = 1e6;
    private static final Pattern FORM =
            Pattern.compile("(?:(?<whole>\\d{1,6})\\s+)?(?<over>\\d{1,3})\\s*/\\s*(?<under>\\d{1,3})"
                    + "|(?<number>\\d{1,6}(?:\\.\\d{1,6})?|\\.\\d{1,6})");
    private static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("(?<number>[0-9./\\s,+-]+)(?<unit>\\p{Alpha}*)\\.?");
    private static final Map<String, String> FRACTIONS = Map.of(
            "½", "1/2", "¼", "1/4", "¾", "3/4", "⅓", "1/3", "⅔", "2/3", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8");

    /** Refuses nothing, less than nothing, and what nobody can measure. */
    public Amount {
        if (!(number > 0 && number <= MOST)) {
            throw new IllegalArgumentException(
                    "an amount must be above 0 and up to 1000000 " + unit.wireName() + ", not " + shown(number));
        }
    }

    /**
     * An amount in one text, such as {@code 3/4 cup}, {@code 1 1/2 lb}, {@code 2.5kg} or {@code 4} for four pieces.
     *
     * @throws IllegalArgumentException in one line that names it and gives good ones
     */
    public static Amount of(String text) {
        Matcher matcher = NUMBER_THEN_UNIT.matcher(plain(text));
        if (!matcher.matches()) {
            throw notUnderstood(text);
        }
        return of(matcher.group("number"), matcher.group("unit"));
    }

    /** The same from a number, such as {@code 1 1/2}, and the name of a unit, which may be empty for pieces. */
    public static Amount of(String number, String unit) {
        return new Amount(number(number), CookUnit.named(unit));
    }

    private static double number(String text) {
        String bare = plain(text);
        Matcher matcher = FORM.matcher(bare);
        if (bare.startsWith("-")) {
            throw new IllegalArgumentException("an amount must be above 0, not " + bare);
        }
        if (!matcher.matches()) {
            throw notUnderstood(text);
        }
        if (matcher.group("number") != null) {
            return Double.parseDouble(matcher.group("number"));
        }
        double under = Double.parseDouble(matcher.group("under"));
        if (under == 0) {
            throw notUnderstood(text);
        }
        double whole = matcher.group("whole") == null ? 0 : Double.parseDouble(matcher.group("whole"));
        return whole + Double.parseDouble(matcher.group("over")) / under;
    }

    private static String plain(String text) {
        String plain = text;
        for (Map.Entry<String, String> fraction : FRACTIONS.entrySet()) {
            plain = plain.replace(fraction.getKey(), " " + fraction.getValue());
        }
        return plain.strip();
    }

    private static IllegalArgumentException notUnderstood(String text) {
        String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
        return new IllegalArgumentException(
                "amount \"" + shown.strip() + "\" is not understood; write it like 3/4 cup, 1 1/2 lb, 2.5 kg or 4");
    }

    /** So many times as much. */
    public Amount times(double factor) {
        return new Amount(number * factor, unit);
    }

    /** As a cook writes it, such as {@code 0.75 cup} or {@code 4}. */
    public String words() {
        return unit == CookUnit.PIECE ? shown(number) : shown(number) + " " + unit.wireName();
    }

    private static String shown(double number) {
        String text = String.format(Locale.ROOT, "%.3f", number);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
