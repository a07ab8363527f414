package spoonfall.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.Output;

/** {@code spoonfall licences}: the parts that Spoonfall comes with, and the licence of each. */
@Command(
        name = "licences",
        description = "List the parts that Spoonfall comes with, and the licence of each.",
        footer = {"", "For example:", "  spoonfall licences"})
final class LicencesCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        try (InputStream in = LicencesCommand.class.getResourceAsStream("/licences.md")) {
            if (in == null) {
                throw new CommandException("the list of licences is not in the program's jar; see docs/licences.md");
            }
            Output.of(spec).print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return 0;
    }
}
