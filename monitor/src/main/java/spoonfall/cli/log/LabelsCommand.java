package spoonfall.cli.log;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.NewFile;
import spoonfall.cli.option.Understood;
import spoonfall.paper.BookLabels;
import spoonfall.paper.Label;
import spoonfall.paper.LabelPrinter;
import spoonfall.paper.LabelSheet;

/** {@code spoonfall log labels}: labels for the jars of a batch. */
@Command(
        name = "labels",
        description = "Make a sheet of labels for the jars of a batch, as PDF or SVG. Print it without scaling.",
        footer = {"", "For example:", "  spoonfall log labels 12 labels.pdf --size 63.5x38.1 --gap 2.5x0 --count 21"})
final class LabelsCommand extends CookCommand {
    @Parameters(index = "1", paramLabel = "FILE", description = "A PDF or SVG file that is not there yet.")
    private Path file = Path.of("");

    @Option(names = "--size", paramLabel = "MM", description = "Of a label, width by height; 63.5x38.1 unless given.")
    private String size = "63.5x38.1";

    @Option(names = "--gap", paramLabel = "MM", description = "Between labels, across by down; 2.5x0 unless given.")
    private String gap = "2.5x0";

    @Option(
            names = "--grid",
            paramLabel = "NxM",
            description = "How many labels are on a sheet, across and down; as many as fit unless given.")
    private @Nullable String grid;

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter; a4 unless given.")
    private String paper = "a4";

    @Option(names = "--count", paramLabel = "N", description = "How many; one for each jar, or 21, unless given.")
    private @Nullable Integer count;

    @Option(names = "--contents", paramLabel = "TEXT", description = "What is in the jar; the fruit unless given.")
    private @Nullable String contents;

    @Override
    public Integer call() {
        BookLabels labels = BookLabels.of(log().book(), id());
        Label label = contents == null ? labels.label() : labels.label(contents);
        LabelSheet sheet = Understood.value(() ->
                LabelSheet.of(paper, size, gap, Optional.ofNullable(grid), count == null ? labels.count() : count));
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".svg")) {
            throw new MisuseException("labels are a PDF or an SVG; call the file labels.pdf, for example");
        }
        NewFile.write(
                file,
                name.endsWith(".pdf")
                        ? LabelPrinter.pdf(label, sheet)
                        : LabelPrinter.svg(label, sheet).getBytes(StandardCharsets.UTF_8));
        out().println("Wrote " + sheet.count() + " labels on " + sheet.pages()
                + (sheet.pages() == 1 ? " page" : " pages") + " into " + file + ".");
        return 0;
    }
}
