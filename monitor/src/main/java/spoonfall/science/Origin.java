package spoonfall.science;

/** How the project knows a published value. */
public enum Origin {
    /** Read in a stored copy of the source. */
    READ("read"),
    /** From memory, not looked up. */
    MEMORY("from memory"),
    /** Computed beforehand from a published formula; holds our own numbers still. */
    COMPUTED("computed");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /** As the tables say it. */
    public String words() {
        return words;
    }
}
