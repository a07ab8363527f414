package spoonfall.cli.learn;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.book.Firmness;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cli.option.Output;
import spoonfall.learn.Learning;
import spoonfall.learn.Proposal;
import spoonfall.log.memory.BatchFile;
import spoonfall.web.book.LearnViews;
import spoonfall.web.wire.WireJson;
import spoonfall.words.Plain;

/** {@code spoonfall learn}: what the batches so far teach, and what to aim at next. */
@Command(
        name = "learn",
        description = "What your batches teach: for each fruit the rise to aim at next, and how sure that is.",
        footer = {
            "",
            "Nothing goes by a proposal until you take it: with --rise, or rise = \"4.6C\" in the kitchen file.",
            "Batches of a notebook are read from batches.csv in the data folder: fruit,final_rise,set.",
            "",
            "For example:",
            "  spoonfall learn",
            "  spoonfall learn --fruit orange --json"
        })
public final class LearnCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--fruit", paramLabel = "FRUIT", description = "This fruit only; it may be one that is new.")
    private @Nullable String fruit;

    @Option(names = "--json", description = "Print it as one JSON object.")
    private boolean json;

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public Integer call() {
        Learning learning = FolderMemory.of(data.folder()).learning();
        PrintWriter out = Output.of(spec);
        if (json) {
            out.println(WireJson.text(fruit == null ? LearnViews.of(learning) : LearnViews.of(learning, fruit)));
            return 0;
        }
        if (learning.batches().isEmpty()) {
            out.println("No batch has told how it set yet. Say it of a recorded one:");
            out.println("  spoonfall log outcome 12 --after day --set soft --fruit orange");
            out.println("or write those of a notebook into " + data.folder().notebook() + ":");
            out.println("  " + BatchFile.HEADING);
            out.println("  orange,4.4C,soft");
        }
        List<String> fruits = fruit == null ? learning.fruits() : List.of(fruit);
        for (String one : fruits) {
            print(learning, learning.propose(one), out);
        }
        if (fruit == null) {
            print(learning, learning.propose("another fruit"), out);
        }
        out.println("To take one: spoonfall serve --rise, or rise in the kitchen file. A set test has the last word.");
        return 0;
    }

    private static void print(Learning learning, Proposal proposal, PrintWriter out) {
        StringBuilder sets = new StringBuilder();
        for (Firmness set : Firmness.values()) {
            long count = learning.batches().stream()
                    .filter(batch -> batch.isOf(proposal.fruit()) && batch.set() == set)
                    .count();
            if (count > 0) {
                sets.append(sets.isEmpty() ? " (" : ", ")
                        .append(count)
                        .append(' ')
                        .append(set.wireName());
            }
        }
        sets.append(sets.isEmpty() ? "" : ")");
        out.printf(
                Locale.ROOT,
                "%s: %d %s%s%n",
                proposal.fruit(),
                proposal.batches(),
                proposal.batches() == 1 ? "batch" : "batches",
                sets);
        proposal.words().forEach(words -> out.println("  " + Plain.text(words)));
    }
}
