package spoonfall.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts with their marks filled in, in °C and with seconds of the cook for a clock, for the terminal. */
public final class Plain {
    private static final Pattern MARK = Pattern.compile("\\{(temp|diff|clock):(-?[0-9.]+)\\}");

    private Plain() {}

    /** The text with its marks filled in; numbers keep the decimals they were written with. */
    public static String text(String marked) {
        Matcher matcher = MARK.matcher(marked);
        return matcher.replaceAll(mark -> switch (mark.group(1)) {
            case "temp" -> mark.group(2) + " °C";
            case "diff" -> mark.group(2) + " °C";
            default -> clock(Double.parseDouble(mark.group(2)));
        });
    }

    /** Seconds of the cook as minutes and seconds, such as {@code 25:07}. */
    public static String clock(double t) {
        long seconds = Math.round(t);
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }
}
