package spoonfall.learn;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a batch had set when somebody looked, from the least to the most. */
public enum Firmness {
    /** It runs like a syrup. */
    RUNNY,
    /** It sags: softer than wanted. */
    SOFT,
    /** As wanted. */
    RIGHT,
    /** Firmer than wanted. */
    FIRM,
    /** It must be cut. */
    STIFF;

    /** The name on the wire, such as {@code right}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The one of that name, in any case.
     *
     * @throws IllegalArgumentException in one line if there is none
     */
    public static Firmness named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values())
                .filter(one -> one.wireName().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a set is "
                        + Stream.of(values()).map(Firmness::wireName).collect(Collectors.joining(", "))
                        + ", not \"" + name.strip() + "\""));
    }
}
