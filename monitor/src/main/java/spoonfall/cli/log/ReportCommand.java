package spoonfall.cli.log;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoonfall.cli.option.NewFile;
import spoonfall.paper.CookReport;
import spoonfall.paper.ReportChoice;

/** {@code spoonfall log report}: a cook in one file to share. */
@Command(
        name = "report",
        description = "Write a cook as one HTML file to share, which opens without Spoonfall and without a network.")
final class ReportCommand extends CookCommand {
    @Parameters(index = "1", paramLabel = "FILE", description = "An HTML file that is not there yet.")
    private Path file = Path.of("");

    @Option(names = "--notes", description = "With the notes and the words of the outcome.")
    private boolean notes;

    @Option(names = "--photos", description = "With the photos.")
    private boolean photos;

    @Option(names = "--kitchen", description = "With the kitchen's name.")
    private boolean kitchen;

    @Option(names = "--ingredients", description = "With what went in, where the batch was planned.")
    private boolean ingredients;

    @Override
    public Integer call() {
        String report = CookReport.of(log().book(), id(), new ReportChoice(notes, photos, kitchen, ingredients));
        NewFile.write(file, report.getBytes(StandardCharsets.UTF_8));
        out().println("Wrote cook " + id() + " into " + file + ".");
        return 0;
    }
}
