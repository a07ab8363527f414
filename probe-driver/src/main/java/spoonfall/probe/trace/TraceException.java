package spoonfall.probe.trace;

/** A trace that cannot be used; the message names the file, the place in it and the way out, in one line. */
public final class TraceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With one line for people. */
    public TraceException(String message) {
        super(message);
    }

    /** With one line for people and what lies behind it. */
    public TraceException(String message, Throwable cause) {
        super(message, cause);
    }
}
