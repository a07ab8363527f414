package spoonfall.cli.option;

/**
 * What was typed cannot be so: it is not understood, out of range, or contradicts something else; the message says why and the
 * way out, in one line. What is understood and cannot be done is a {@link CommandException}.
 */
public final class MisuseException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** For that reason. */
    public MisuseException(String message) {
        super(message);
    }

    /** For that reason, because of something else. */
    public MisuseException(String message, Throwable cause) {
        super(message, cause);
    }
}
