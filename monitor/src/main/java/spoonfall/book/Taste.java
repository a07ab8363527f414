package spoonfall.book;

import java.util.Locale;

/** How a preserve tastes; several may be true of one. */
public enum Taste {
    /** Of fresh fruit, with its acid. */
    BRIGHT,
    /** Of peel and pith. */
    BITTER,
    /** Of cooked sugar. */
    CARAMEL;

    /** The name on the wire, such as {@code bright}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The one of that name.
     *
     * @throws IllegalArgumentException with one line that says which there are
     */
    public static Taste named(String name) {
        return Named.in(values(), Taste::wireName, name, "a taste");
    }
}
