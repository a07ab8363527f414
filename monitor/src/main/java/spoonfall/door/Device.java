package spoonfall.door;

import java.time.Instant;
import java.util.regex.Pattern;

/**
 * A device that was let in.
 *
 * @param id what it is called here, six letters and digits
 * @param name what its owner calls it
 * @param role what it may do
 * @param tokenHash the SHA-256 of its token in hexadecimal digits; the token itself is on the device only
 * @param pairedAt when it was let in
 */
public record Device(String id, String name, Role role, String tokenHash, Instant pairedAt) {
    /** The longest name, in characters. */
    public static final int LONGEST_NAME = 40;

    private static final Pattern ID = Pattern.compile("[a-z0-9]{6}");
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /** Refuses what cannot be. */
    public Device {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("a device's id is six letters and digits, not \"" + id + "\"");
        }
        if (!HASH.matcher(tokenHash).matches()) {
            throw new IllegalArgumentException("the device \"" + id + "\" has no SHA-256 of a token");
        }
        name = checkedName(name);
    }

    /**
     * A name as it is kept.
     *
     * @throws IllegalArgumentException in one line that says what is wrong with it
     */
    public static String checkedName(String name) {
        String stripped = name.strip();
        if (stripped.isEmpty() || stripped.length() > LONGEST_NAME) {
            throw new IllegalArgumentException(
                    "give the device a name of 1 to " + LONGEST_NAME + " characters, such as \"Kitchen tablet\"");
        }
        if (stripped.codePoints().anyMatch(Device::isUnseen)) {
            throw new IllegalArgumentException("a device's name has letters that can be seen only");
        }
        return stripped;
    }

    private static boolean isUnseen(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }
}
