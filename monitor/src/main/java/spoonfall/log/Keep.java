package spoonfall.log;

import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long something of a cook is kept: for a time, for so many cooks, or for good when neither is given.
 *
 * @param time for so long after the cook began
 * @param cooks of so many cooks, the latest ones
 * @param words as it was said, such as {@code 2 years}
 */
public record Keep(Optional<Period> time, OptionalInt cooks, String words) {
    /** For good. */
    public static final Keep EVERYTHING = new Keep(Optional.empty(), OptionalInt.empty(), "everything");

    private static final Pattern FORM = Pattern.compile("(\\d{1,5})\\s+(day|month|year|cook)s?");

    /**
     * What was said, such as {@code 2 years}, {@code 90 days}, {@code 200 cooks} or {@code everything}.
     *
     * @throws IllegalArgumentException with one line that gives a good one
     */
    public static Keep parse(String text) {
        String said = text.strip().toLowerCase(Locale.ROOT);
        if (said.equals(EVERYTHING.words())) {
            return EVERYTHING;
        }
        Matcher matcher = FORM.matcher(said);
        int count = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        if (count < 1) {
            throw new IllegalArgumentException(
                    "must be such as \"2 years\", \"18 months\", \"90 days\", \"200 cooks\" or"
                            + " \"everything\", not \"" + text + "\"");
        }
        return switch (matcher.group(2)) {
            case "day" -> during(Period.ofDays(count), said);
            case "month" -> during(Period.ofMonths(count), said);
            case "year" -> during(Period.ofYears(count), said);
            default -> new Keep(Optional.empty(), OptionalInt.of(count), said);
        };
    }

    private static Keep during(Period time, String words) {
        return new Keep(Optional.of(time), OptionalInt.empty(), words);
    }

    /**
     * Whether it is kept of a cook.
     *
     * @param startedAt when that cook began
     * @param newer how many cooks are newer
     * @param now now
     */
    public boolean covers(Instant startedAt, int newer, Instant now) {
        boolean young = time.map(span -> startedAt
                        .atOffset(ZoneOffset.UTC)
                        .plus(span)
                        .toInstant()
                        .isAfter(now))
                .orElse(true);
        return young && (cooks.isEmpty() || newer < cooks.getAsInt());
    }
}
