package spoonfall.cook;

/** What went into a pan that is on its way back to the boil because of it. */
public enum WentIn {
    /** Nothing that is seen. */
    NOTHING,
    /** Something cold. */
    SOMETHING_COLD,
    /** The sugar, into fruit that simmered without; it is still going in, or the pan does not boil with it yet. */
    SUGAR
}
