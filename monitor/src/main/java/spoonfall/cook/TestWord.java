package spoonfall.cook;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import spoonfall.settest.TestAnswer;

/**
 * What somebody says about a set test. Saying it twice changes nothing the second time.
 *
 * @param says what it is about
 * @param id names the test: 1 to 40 letters, digits and hyphens, made up by whoever begins it
 * @param plateS how long the plate is to stand, in seconds, {@link #SHORTEST_PLATE_S} to {@link #LONGEST_PLATE_S}
 * @param answer what was seen; there exactly if it is about that
 */
public record TestWord(Says says, String id, double plateS, Optional<TestAnswer> answer) {
    /** A plate that stood less than that in seconds is not cold enough to tell (common practice, no source). */
    public static final double SHORTEST_PLATE_S = 60;

    /** A plate need not stand longer than that in seconds (common practice, no source). */
    public static final double LONGEST_PLATE_S = 120;

    /** How long a plate stands in seconds unless somebody says otherwise (common practice, no source). */
    public static final double USUAL_PLATE_S = 90;

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9-]{1,40}");

    /** What a word is about. */
    public enum Says {
        /** The pan is off the heat and something of it on the plate. */
        BEGUN,
        /** Something was seen. */
        SEEN,
        /** What was seen is taken back, and the test goes on. */
        UNSEEN,
        /** There was no such test. */
        UNDONE
    }

    /** Validates the name and the plate's time. */
    public TestWord {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("a test's id is 1 to 40 letters, digits and hyphens");
        }
        if (!(plateS >= SHORTEST_PLATE_S && plateS <= LONGEST_PLATE_S)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a plate stands for 60 to 120 seconds, not %.0f", plateS));
        }
        if (answer.isPresent() != (says == Says.SEEN)) {
            throw new IllegalArgumentException("an answer belongs to what was seen, and to nothing else");
        }
    }

    /** The pan is off the heat for a test. */
    public static TestWord begun(String id, double plateS) {
        return new TestWord(Says.BEGUN, id, plateS, Optional.empty());
    }

    /** Something was seen. */
    public static TestWord seen(String id, TestAnswer answer) {
        return new TestWord(Says.SEEN, id, USUAL_PLATE_S, Optional.of(answer));
    }

    /** What was seen is taken back. */
    public static TestWord unseen(String id) {
        return new TestWord(Says.UNSEEN, id, USUAL_PLATE_S, Optional.empty());
    }

    /** There was no such test. */
    public static TestWord undone(String id) {
        return new TestWord(Says.UNDONE, id, USUAL_PLATE_S, Optional.empty());
    }
}
