package spoonfall.cli.option;

import java.util.logging.ConsoleHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** How the program logs: one line a message on the error stream, more when asked. */
public final class Logging {
    private Logging() {}

    /** Warnings only, or what the program does as well, with stack traces. */
    public static void configure(boolean verbose) {
        LogManager.getLogManager().reset();
        Handler handler = new ConsoleHandler();
        handler.setLevel(Level.ALL);
        handler.setFormatter(verbose ? new SimpleFormatter() : new OneLine());
        Logger root = Logger.getLogger("");
        root.addHandler(handler);
        root.setLevel(Level.WARNING);
        // The server's own warnings are about its insides; ours say what a cook can do.
        Logger.getLogger("org.eclipse.jetty").setLevel(verbose ? Level.INFO : Level.SEVERE);
        Logger.getLogger("io.javalin").setLevel(verbose ? Level.INFO : Level.SEVERE);
        OURS.setLevel(verbose ? Level.ALL : Level.WARNING);
    }

    /** Says how the thermometer is read once it is found, beside warnings. */
    public static void tellOfProbes() {
        KITCHEN.setLevel(Level.INFO);
    }

    /** Kept, for a logger that nobody holds forgets its level. */
    private static final Logger OURS = Logger.getLogger("spoonfall");

    private static final Logger KITCHEN = Logger.getLogger("spoonfall.kitchen");

    private static final class OneLine extends SimpleFormatter {
        @Override
        public String format(LogRecord record) {
            return formatMessage(record) + System.lineSeparator();
        }
    }
}
