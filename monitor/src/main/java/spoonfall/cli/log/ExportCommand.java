package spoonfall.cli.log;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.NewFile;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.cook.StoredTrace;
import spoonfall.probe.trace.Trace;

/** {@code spoonfall log export}: takes a cook out of the record. */
@Command(
        name = "export",
        description =
                "Write a cook as a trace (CSV, with CSVW metadata beside it), or whole (JSON) by the file's name.")
final class ExportCommand extends CookCommand {
    @Parameters(index = "1", paramLabel = "FILE", description = "A CSV or JSON file that is not there yet.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        if (!whole(file) && !named(file, ".csv")) {
            throw new MisuseException("a cook is a CSV or a JSON file; call it cook.csv or cook.json, for example");
        }
        if (Files.exists(file)) {
            throw new CommandException(file + " is there already; name a file that is not");
        }
        try (CookLog record = log().open()) {
            if (whole(file)) {
                NewFile.write(file, record.whole(id()).json().getBytes(StandardCharsets.UTF_8));
                out().println("Wrote all of cook " + id() + ", its photos too, to " + file + ".");
                return 0;
            }
            Trace trace = StoredTrace.of(record.cook(id()));
            if (trace.size() == 0) {
                throw new CommandException("cook " + id() + " has no readings to write");
            }
            trace.write(file);
            out().println("Wrote " + trace.size() + " readings to " + file + " and what they mean beside it.");
        }
        return 0;
    }

    /** Whether a file holds a whole cook, by its name. */
    static boolean whole(Path file) {
        return named(file, ".json");
    }

    private static boolean named(Path file, String ending) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
    }
}
