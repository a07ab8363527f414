package spoonfall.canning;

/** What the jars are processed in. */
public enum CannerKind {
    /** A deep pan in which the jars stand under water. */
    BOILING_WATER("boiling-water", "boiling water"),
    /** A shallow pan under a dome, in which they stand in steam that is not under pressure. */
    STEAM("steam", "steam");

    private final String wireName;
    private final String medium;

    CannerKind(String wireName, String medium) {
        this.wireName = wireName;
        this.medium = medium;
    }

    /** The name on the wire, such as {@code boiling-water}. */
    public String wireName() {
        return wireName;
    }

    /** What is around the jars. */
    String medium() {
        return medium;
    }
}
