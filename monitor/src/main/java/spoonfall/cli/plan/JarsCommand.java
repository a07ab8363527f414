package spoonfall.cli.plan;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.canning.ProcessingAnswer;
import spoonfall.canning.ProcessingTables;
import spoonfall.canning.Typed;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;

/** {@code spoonfall jars}: how long filled jars are processed, by the published tables. */
@Command(
        name = "jars",
        description = "Say how long filled jars are processed, by the published tables, or whom to ask.",
        footer = {
            "",
            "For example:",
            "  spoonfall jars --elevation 1240m --jar half-pint --sterilised no --canner boiling-water"
                    + " --headspace 1/4in",
            "  spoonfall jars --elevation 4068ft --jar pint --sterilised yes --canner steam --headspace 1/4in"
                    + " --ph 3.2 --tested yes"
        })
public final class JarsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--food",
            paramLabel = "FOOD",
            description = "marmalade, jam, jelly or other; marmalade unless given.")
    private @Nullable String food;

    @Option(
            names = "--elevation",
            paramLabel = "HEIGHT",
            description = "Height of the kitchen above sea level, such as 1240m or 4068ft.")
    private @Nullable String elevation;

    @Option(
            names = "--jar",
            paramLabel = "SIZE",
            description = "smaller, half-pint, pint or larger, or what a jar holds, such as 250mL.")
    private @Nullable String jar;

    @Option(
            names = "--sterilised",
            paramLabel = "YES|NO",
            description = "Whether the empty jars were boiled before they were filled.")
    private @Nullable String sterilised;

    @Option(names = "--canner", paramLabel = "CANNER", description = "boiling-water or steam.")
    private @Nullable String canner;

    @Option(
            names = "--recipe-time",
            paramLabel = "TIME",
            description = "The processing time of your tested recipe, such as 10min; it counts if it is longer.")
    private @Nullable String recipeTime;

    @Option(
            names = "--recipe-elevation",
            paramLabel = "HEIGHT",
            description = "The elevation for which the recipe gives its time; this kitchen's unless given.")
    private @Nullable String recipeElevation;

    @Option(
            names = "--headspace",
            paramLabel = "LENGTH",
            description = "From the preserve to the rim, such as 1/4in or 6mm.")
    private @Nullable String headspace;

    @Option(names = "--ph", paramLabel = "PH", description = "The preserve's pH, such as 3.2; needed for steam.")
    private @Nullable String acidity;

    @Option(
            names = "--tested",
            paramLabel = "YES|NO",
            description = "Whether the recipe was tested for a boiling-water canner; needed for steam.")
    private @Nullable String tested;

    @Override
    public Integer call() {
        Typed typed = new Typed(
                Optional.ofNullable(food),
                Optional.ofNullable(elevation),
                Optional.ofNullable(jar),
                Optional.ofNullable(sterilised),
                Optional.ofNullable(canner),
                Optional.ofNullable(recipeTime),
                Optional.ofNullable(recipeElevation),
                Optional.ofNullable(headspace),
                Optional.ofNullable(acidity),
                Optional.ofNullable(tested));
        ProcessingAnswer answer = ProcessingTables.answer(Understood.value(typed::batch));
        if (answer instanceof ProcessingAnswer.None none) {
            throw new CommandException(none.text());
        }
        if (answer instanceof ProcessingAnswer.Time time) {
            print(time, Output.of(spec));
        }
        return 0;
    }

    private static void print(ProcessingAnswer.Time time, PrintWriter out) {
        out.println("Process the jars for " + time.minutes() + " min.");
        out.println("Empty jars are sterilised by " + time.steriliseMinutes() + " min in boiling water here.");
        section("Why", time.reasons(), out);
        section("Take care", time.cautions(), out);
        section("Sources", time.sources(), out);
    }

    private static void section(String title, List<String> lines, PrintWriter out) {
        out.println();
        out.println(title + ":");
        lines.forEach(line -> out.println("  " + line));
    }
}
