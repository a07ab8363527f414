package spoonfall.cli.learn;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.book.Firmness;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.learn.Batch;
import spoonfall.learn.Diagnosis;
import spoonfall.log.memory.BatchMemory;
import spoonfall.web.book.LearnViews;
import spoonfall.web.wire.WireJson;
import spoonfall.words.Plain;

/** {@code spoonfall diagnose}: why a batch set as it did, by its record, and what to do with it. */
@Command(
        name = "diagnose",
        description = "Why a batch set as it did, with the evidence in its record, and what to do with it.",
        footer = {"", "For example:", "  spoonfall diagnose 12 --set soft --fruit orange"})
public final class DiagnoseCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "ID", description = "Its number in \"spoonfall log list\".")
    private long id;

    @Option(
            names = "--set",
            paramLabel = "SET",
            description = "How it set: runny, soft, right, firm or stiff; by default what was told of it.")
    private @Nullable String set;

    @Option(names = "--fruit", paramLabel = "FRUIT", description = "What was made; by default what was told of it.")
    private @Nullable String fruit;

    @Option(names = "--json", description = "Print it as one JSON object.")
    private boolean json;

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public Integer call() {
        BatchMemory memory = FolderMemory.of(data.folder());
        Optional<Batch> told = memory.batch(id);
        Optional<Firmness> how = Optional.ofNullable(set)
                .map(name -> Understood.value(name, Firmness::named))
                .or(() -> told.map(Batch::set));
        Optional<String> what = Optional.ofNullable(fruit).or(() -> told.map(Batch::fruit));
        Diagnosis diagnosis = memory.diagnosis(id, how, what);
        PrintWriter out = Output.of(spec);
        if (json) {
            out.println(WireJson.text(LearnViews.of(diagnosis)));
            return 0;
        }
        out.println("Cook " + id + ". " + Plain.text(diagnosis.headline()));
        diagnosis.findings().forEach(finding -> {
            out.println((finding.cause() ? "* " : "- ") + Plain.text(finding.text()));
            out.println("    " + Plain.text(finding.evidence()));
        });
        out.println("What to do:");
        diagnosis.next().forEach(next -> out.println("  " + Plain.text(next)));
        diagnosis.cautions().forEach(caution -> out.println("  Take care: " + Plain.text(caution)));
        return 0;
    }
}
