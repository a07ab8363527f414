package spoonfall.probe;

import java.util.OptionalDouble;

/**
 * One temperature of one probe at one instant, with its quality.
 *
 * @param probe name of the probe, as the kitchen calls it
 * @param atNanos monotonic instant in nanoseconds; only differences have a meaning
 * @param temperatureC temperature in degrees Celsius; present if and only if the quality is {@link
 *     Quality#GOOD}
 * @param raw what the probe sent, shortened to {@link #MAX_RAW} characters, control characters
 *     replaced
 * @param quality how far to trust it
 */
public record Reading(String probe, long atNanos, OptionalDouble temperatureC, String raw, Quality quality) {
    /** Longest raw text that is kept. */
    public static final int MAX_RAW = 120;

    /** Lowest temperature in °C that counts as {@link Quality#GOOD}. */
    public static final double LOWEST_C = -50;

    /** Highest temperature in °C that counts as {@link Quality#GOOD}. */
    public static final double HIGHEST_C = 400;

    /** Validates that temperature and quality agree, and makes the raw text safe to show. */
    public Reading {
        if (temperatureC.isPresent() != (quality == Quality.GOOD)) {
            throw new IllegalArgumentException(
                    "a reading has a temperature exactly when it is good: " + quality + ", " + temperatureC);
        }
        if (temperatureC.isPresent() && !inRange(temperatureC.getAsDouble())) {
            throw new IllegalArgumentException("not a pan temperature: " + temperatureC.getAsDouble() + " °C");
        }
        raw = printable(raw);
    }

    /** A good reading of {@code temperatureC}, which must be between {@link #LOWEST_C} and {@link #HIGHEST_C}. */
    public static Reading good(String probe, long atNanos, double temperatureC, String raw) {
        return new Reading(probe, atNanos, OptionalDouble.of(temperatureC), raw, Quality.GOOD);
    }

    /** A reading without a temperature, for the reason that {@code quality} gives. */
    public static Reading bad(String probe, long atNanos, String raw, Quality quality) {
        return new Reading(probe, atNanos, OptionalDouble.empty(), raw, quality);
    }

    /** The quality that a temperature of {@code temperatureC} degrees Celsius has by its value alone. */
    public static Quality qualityOf(double temperatureC) {
        if (!Double.isFinite(temperatureC)) {
            return Quality.NOT_FINITE;
        }
        return inRange(temperatureC) ? Quality.GOOD : Quality.OUT_OF_RANGE;
    }

    private static boolean inRange(double temperatureC) {
        return temperatureC >= LOWEST_C && temperatureC <= HIGHEST_C;
    }

    private static String printable(String raw) {
        String shortened = raw.length() > MAX_RAW ? raw.substring(0, MAX_RAW - 1) + "…" : raw;
        if (shortened.chars().noneMatch(Character::isISOControl)) {
            return shortened; // as nearly always
        }
        StringBuilder safe = new StringBuilder(shortened.length());
        shortened.chars().forEach(c -> safe.append(Character.isISOControl(c) ? '\u00B7' : (char) c));
        return safe.toString();
    }
}
