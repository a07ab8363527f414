package spoonfall.door;

import java.util.Locale;

/** What a paired device may do. */
public enum Role {
    /** Looks and hears, and changes nothing. */
    VIEWER,
    /** Does what the page on this machine does, but lets nobody in. */
    COOK;

    /** What it is called on the wire and in the terminal. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it may change anything. */
    public boolean mayAct() {
        return this == COOK;
    }

    /**
     * The role of that name.
     *
     * @throws IllegalArgumentException in one line that says what it can be
     */
    public static Role named(String name) {
        for (Role role : values()) {
            if (role.wireName().equals(name)) {
                return role;
            }
        }
        throw new IllegalArgumentException("a role is viewer or cook, not \"" + name + "\"");
    }
}
