package spoonfall.cli.log;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.Output;

/** A part of {@code spoonfall log} that is about one cook, named by its number. */
abstract class CookCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable LogCommand log;

    @Parameters(index = "0", paramLabel = "ID", description = "Its number in the list.")
    private long id;

    /** The cook's number. */
    final long id() {
        return id;
    }

    /** The command that this is a part of. */
    final LogCommand log() {
        return LogCommand.of(log);
    }

    /** Where to say what was done. */
    final PrintWriter out() {
        return Output.of(spec);
    }
}
