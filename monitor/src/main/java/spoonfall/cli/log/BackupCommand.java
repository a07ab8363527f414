package spoonfall.cli.log;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.Output;
import spoonfall.log.store.CookLog;

/** {@code spoonfall backup}: copies the record of all cooks. */
@Command(
        name = "backup",
        description = "Copy the record of all cooks into one file, even while \"serve\" writes it.",
        footer = {"", "For example:", "  spoonfall backup /media/stick/cooks-2026-11.db"})
public final class BackupCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "A file that is not there yet.")
    private Path copy = Path.of("");

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public Integer call() {
        try (CookLog log = CookLog.open(data.folder().cooks())) {
            int cooks = log.list().size();
            log.backup(copy);
            Output.of(spec)
                    .println("Copied " + cooks + (cooks == 1 ? " cook" : " cooks") + " into " + copy
                            + ". To use it: spoonfall serve --data FOLDER, with the file in it as cooks.db.");
            return 0;
        }
    }
}
