package spoonfall.log;

import java.time.Instant;
import java.util.Locale;
import spoonfall.book.Wording;

/**
 * A line that somebody wrote of a cook.
 *
 * @param key tells it from others: who writes it again writes it once; 1 to {@link #LONGEST_KEY} characters
 * @param atMillis milliseconds of the cook; what was written after it lies beyond its end
 * @param writtenAt the wall clock then
 * @param text 1 to {@link #LONGEST} characters in one line
 */
public record CookNote(String key, long atMillis, Instant writtenAt, String text) {
    /** As many characters (code points) fit into a note. */
    public static final int LONGEST = 500;

    /** As many characters fit into a key. */
    public static final int LONGEST_KEY = 64;

    /** As many notes fit into a cook. */
    public static final int MOST = 200;

    private static final String TRY = "; write it in one line, such as: skimmed twice, a little dark";

    /** Validates key and text. */
    public CookNote {
        if (key.isEmpty() || key.length() > LONGEST_KEY) {
            throw new IllegalArgumentException("a note's key has 1 to " + LONGEST_KEY + " characters");
        }
        if (!text.equals(checked(text))) {
            throw new IllegalArgumentException("a note neither begins nor ends with a space");
        }
    }

    /**
     * What was written, without spaces around it.
     *
     * @throws IllegalArgumentException with one line that says why it is no note, and the way out
     */
    public static String checked(String text) {
        String line = text.strip();
        int length = line.codePointCount(0, line.length());
        if (length == 0) {
            throw new IllegalArgumentException("there is nothing in that note" + TRY);
        }
        if (length > LONGEST) {
            throw new IllegalArgumentException(
                    "a note has at most " + LONGEST + " characters, and that one has " + length + "; make two of it");
        }
        Wording.unfit(line).ifPresent(point -> {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a note holds plain characters only, and U+%04X is none", point) + TRY);
        });
        return line;
    }
}
