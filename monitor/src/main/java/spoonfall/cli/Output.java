package spoonfall.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** Where a command prints. */
final class Output {
    private Output() {}

    static PrintWriter of(@Nullable CommandSpec spec) {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        return spec.commandLine().getOut();
    }
}
