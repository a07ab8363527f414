package spoonfall.book;

import java.util.Locale;

/** How a preserve set, from the loosest to the hardest. */
public enum Firmness {
    /** It pours. */
    RUNNY,
    /** It holds, but not on a spoon. */
    SOFT,
    /** As it was wanted. */
    RIGHT,
    /** More than was wanted. */
    FIRM,
    /** It stands like rubber, or cannot be spread. */
    STIFF;

    /** The name on the wire, such as {@code right}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The one of that name.
     *
     * @throws IllegalArgumentException with one line that says which there are
     */
    public static Firmness named(String name) {
        return Named.in(values(), Firmness::wireName, name, "a set");
    }
}
