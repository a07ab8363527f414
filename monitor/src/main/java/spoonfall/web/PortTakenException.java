package spoonfall.web;

import io.javalin.util.JavalinBindException;
import java.net.BindException;
import java.util.Optional;

/** The service cannot listen where it was told to. */
public final class PortTakenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private PortTakenException(Throwable cause) {
        super("the port is taken", cause);
    }

    /** The one that lies behind {@code e}, if that is what went wrong. */
    static Optional<RuntimeException> in(RuntimeException e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException || cause instanceof JavalinBindException) {
                return Optional.of(new PortTakenException(e));
            }
        }
        return Optional.empty();
    }
}
