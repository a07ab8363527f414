package spoonfall.cli.option;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** Where a command prints. */
public final class Output {
    private Output() {}

    /** Where the command of that specification prints. */
    public static PrintWriter of(@Nullable CommandSpec spec) {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        return spec.commandLine().getOut();
    }
}
