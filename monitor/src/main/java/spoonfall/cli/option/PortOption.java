package spoonfall.cli.option;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The option that says where the page is. */
public final class PortOption {
    /** Where the page is unless someone says otherwise. */
    public static final int DEFAULT = 8460;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "The page's port; 8460 unless given, 0 for any free one.")
    private @Nullable Integer port;

    /** The port by the option, else {@code otherwise}, else the default. */
    public int port(OptionalInt otherwise) {
        int chosen = port != null ? port : otherwise.orElse(DEFAULT);
        if (chosen < 0 || chosen > 65535) {
            throw new MisuseException("--port must be 0 to 65535, such as 8460, not " + chosen);
        }
        return chosen;
    }
}
