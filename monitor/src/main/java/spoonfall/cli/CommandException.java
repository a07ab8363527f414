package spoonfall.cli;

/** A command cannot go on; the message says why and the way out, in one line. */
final class CommandException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CommandException(String message) {
        super(message);
    }

    CommandException(String message, Throwable cause) {
        super(message, cause);
    }
}
