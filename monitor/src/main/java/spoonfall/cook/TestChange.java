package spoonfall.cook;

import java.util.Locale;

/** What changed about a set test. */
public enum TestChange {
    /** It began. */
    BEGUN,
    /** Something was seen. */
    SEEN,
    /** What was seen was taken back. */
    UNSEEN,
    /** It was taken back altogether. */
    UNDONE;

    /** The name on the wire, such as {@code begun}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
