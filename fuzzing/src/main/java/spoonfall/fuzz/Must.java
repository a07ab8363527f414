package spoonfall.fuzz;

/** What has to hold whatever the input; an {@link AssertionError} is a finding. */
public final class Must {
    /** Longest sentence that is said to a cook about what was wrong. */
    private static final int LONGEST_SENTENCE = 1000;

    private Must() {}

    /** Says what was broken, unless it holds. */
    public static void hold(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }

    /** Says what differs, unless both are equal. */
    public static void equal(Object one, Object other, String what) {
        if (!one.equals(other)) {
            throw new AssertionError(what + ": " + one + " and " + other);
        }
    }

    /** A complaint is one line, not empty, and no longer than anybody reads. */
    public static void beOneLine(String sentence) {
        hold(!sentence.isBlank(), "a complaint says nothing");
        hold(sentence.length() <= LONGEST_SENTENCE, "a complaint has " + sentence.length() + " characters");
        hold(
                sentence.chars().noneMatch(c -> c == '\n' || c == '\r'),
                "a complaint has several lines: " + start(sentence));
    }

    private static String start(String text) {
        return text.substring(0, Math.min(text.length(), 200));
    }
}
