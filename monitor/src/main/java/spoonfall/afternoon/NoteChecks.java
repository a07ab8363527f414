package spoonfall.afternoon;

import java.util.regex.Pattern;

/** What batch notes may hold. */
final class NoteChecks {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,29}");
    private static final int LONGEST_NAME = 60;
    private static final int MOST_MINUTES = 48 * 60;

    private NoteChecks() {}

    static void id(String what, String id) {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "a " + what + " is called by 1 to 30 small letters, digits and hyphens, not \""
                            + id.substring(0, Math.min(id.length(), LONGEST_NAME)) + "\"");
        }
    }

    static void name(String id, String name) {
        boolean plain = name.codePoints().noneMatch(Character::isISOControl) && !name.contains("{");
        if (name.isBlank() || name.length() > LONGEST_NAME || !plain) {
            throw new IllegalArgumentException(
                    "the name of \"" + id + "\" must be 1 to " + LONGEST_NAME + " plain characters");
        }
    }

    static void minutes(String id, int minutes) {
        if (minutes < 0 || minutes > MOST_MINUTES) {
            throw new IllegalArgumentException(
                    "\"" + id + "\" must take 0 to " + MOST_MINUTES + " minutes, not " + minutes);
        }
    }
}
