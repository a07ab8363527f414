package spoonfall.canner;

/** What was said of the jars cannot be so now; the message is one line for people, with the way out. */
public final class NotNow extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** A refusal for that reason. */
    public NotNow(String message) {
        super(message);
    }
}
