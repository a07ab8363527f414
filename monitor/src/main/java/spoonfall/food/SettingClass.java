package spoonfall.food;

/**
 * Whether a fruit sets by its own pectin and acid, in the three classes of So Easy to Preserve (University of Georgia
 * Cooperative Extension).
 */
public enum SettingClass {
    /** It usually has enough natural pectin and acid. */
    ENOUGH("enough"),
    /** It is usually low in acid or pectin, and may need either. */
    MAY_NEED("may-need"),
    /** It always needs added acid, pectin or both. */
    NEEDS("needs"),
    /** The source does not name it. */
    NOT_LISTED("");

    private final String wireName;

    SettingClass(String wireName) {
        this.wireName = wireName;
    }

    /** The name in tables and on the wire; empty for what is not listed. */
    public String wireName() {
        return wireName;
    }
}
