package spoonfall.kitchen.ask;

/** What was asked of the kitchen cannot be done; the message is one line for people, with the way out. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** A refusal for that reason. */
    public Refusal(String message) {
        super(message);
    }

    /** A refusal because something else failed. */
    public Refusal(String message, Throwable cause) {
        super(message, cause);
    }
}
