package spoonfall.cli.option;

/** A command cannot go on; the message says why and the way out, in one line. */
public final class CommandException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** For that reason. */
    public CommandException(String message) {
        super(message);
    }

    /** For that reason, because of something else. */
    public CommandException(String message, Throwable cause) {
        super(message, cause);
    }
}
