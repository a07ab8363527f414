package spoonfall.book;

import java.util.Locale;
import java.util.OptionalInt;

/** Words that somebody wrote: plain characters in one line, so that they do no harm wherever they are shown. */
public final class Wording {
    private Wording() {}

    /**
     * The words without spaces around them; they may be none.
     *
     * @param what they are, such as {@code a fruit}
     * @param longest how many characters (code points) fit
     * @throws IllegalArgumentException with one line that says why they cannot be
     */
    public static String checked(String what, String text, int longest) {
        String line = text.strip();
        int length = line.codePointCount(0, line.length());
        if (length > longest) {
            throw new IllegalArgumentException(
                    what + " has at most " + longest + " characters, and that one has " + length);
        }
        unfit(line).ifPresent(point -> {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s holds plain characters in one line, and U+%04X is none", what, point));
        });
        return line;
    }

    /** The first code point that is no plain character of one line; empty if all are. */
    public static OptionalInt unfit(String line) {
        return line.codePoints().filter(Wording::refused).findFirst();
    }

    /** What moves a cursor, breaks a line, turns the writing round or is half a character. */
    private static boolean refused(int point) {
        int type = Character.getType(point);
        boolean turnsRound = (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
        return turnsRound
                || type == Character.CONTROL
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED;
    }
}
