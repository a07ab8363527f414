package spoonfall.cli.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.Output;
import spoonfall.science.Figures;

/**
 * {@code spoonfall science}: computes the figures of docs/science.md anew and writes them between its two marks,
 * with the plot beside it. For whoever changes the physics; a test holds that the files are what it writes.
 */
@Command(
        name = "science",
        hidden = true,
        description = "Write the figures of docs/science.md anew.",
        footer = {"", "For example:", "  spoonfall science --into docs"})
public final class ScienceCommand implements Callable<Integer> {
    private static final String BEGIN = "<!-- figures: `spoonfall science` writes from here -->\n";
    private static final String END = "<!-- figures: to here -->\n";

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--into", paramLabel = "FOLDER", description = "Where science.md is; docs unless given.")
    private Path into = Path.of("docs");

    @Override
    public Integer call() throws IOException {
        Path page = into.resolve("science.md");
        if (!Files.exists(page)) {
            throw new CommandException("there is no file " + page + "; name its folder with --into");
        }
        String text = Files.readString(page);
        int begin = text.indexOf(BEGIN);
        int end = text.indexOf(END);
        if (begin < 0 || end < begin) {
            throw new CommandException(page + " has no place for figures: the marks \"" + BEGIN.strip() + "\" and \""
                    + END.strip() + "\", each on a line of its own");
        }
        Path plot = into.resolve("science-syrup.svg");
        Files.writeString(
                page, text.substring(0, begin + BEGIN.length()) + "\n" + Figures.tables() + "\n" + text.substring(end));
        Files.writeString(plot, Figures.syrupPlot());
        Output.of(spec).println("Wrote " + page + " and " + plot + ".");
        return 0;
    }
}
