package spoonfall.announce;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Turns what the kitchen says into words for a voice: {@code {temp:100.4}} becomes "100.4 degrees", and {@code {clock:1230}} the time of
 * day.
 *
 * @param fahrenheit whether temperatures are said in °F, else in °C
 * @param zone where the kitchen's clock hangs
 */
record SpokenText(boolean fahrenheit, ZoneId zone) {
    private static final Pattern MARK = Pattern.compile("\\{(temp|diff|clock):(-?[0-9]{1,9}(?:\\.[0-9]{1,9})?)\\}");

    /** The text with its marks filled in; {@code startedAt} is the wall clock at second 0 of the cook. */
    String of(String marked, Instant startedAt) {
        return MARK.matcher(marked).replaceAll(mark -> {
            double value = Double.parseDouble(mark.group(2));
            return switch (mark.group(1)) {
                case "temp" -> degrees(fahrenheit ? value * 1.8 + 32 : value);
                case "diff" -> degrees(fahrenheit ? value * 1.8 : value);
                default -> clock(startedAt.plusMillis(Math.round(value * 1000)));
            };
        });
    }

    private static String degrees(double value) {
        String digits = String.format(Locale.ROOT, "%.1f", value);
        String plain = digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
        return plain + (plain.equals("1") ? " degree" : " degrees");
    }

    private String clock(Instant at) {
        ZonedDateTime local = at.atZone(zone);
        return String.format(Locale.ROOT, "%d:%02d", local.getHour(), local.getMinute());
    }
}
