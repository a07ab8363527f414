package spoonfall.kitchen;

/** The kinds of words that a cook's record keeps. */
final class Words {
    static final String ACKNOWLEDGE = "acknowledge";
    static final String SHELVE = "shelve";
    static final String UNSHELVE = "unshelve";

    /** What the cook is measured against has changed. */
    static final String BASIS = "basis";

    /** What makes a thermometer's readings true has changed. */
    static final String CORRECTION = "correction";

    /** The watch went on after nobody watched. */
    static final String CAME_BACK = "came-back";

    /** Whether the cook is written down has changed. */
    static final String RECORDING = "recording";

    private Words() {}
}
