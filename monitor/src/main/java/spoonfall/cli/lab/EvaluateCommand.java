package spoonfall.cli.lab;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.lab.varied.CookKind;
import spoonfall.probe.trace.Trace;
import spoonfall.score.ByHand;
import spoonfall.score.report.Evaluation;
import spoonfall.units.Quantities;

/** {@code spoonfall evaluate}: scores the monitor on labelled traces. */
@Command(
        name = "evaluate",
        description = "Score the monitor on labelled traces: forecasts, faults found, false alarms.",
        footer = {
            "",
            "For example:",
            "  spoonfall evaluate sample-traces",
            "  spoonfall evaluate --simulate 300 --seed 1 --report score.html"
        })
public final class EvaluateCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", arity = "0..1", description = "Where the traces are.")
    private @Nullable Path folder;

    @Option(names = "--simulate", paramLabel = "N", description = "Draw so many cooks at random instead.")
    private @Nullable Integer simulate;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the first of them; 1 unless given.")
    private long seed = 1;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            completionCandidates = VariedCooks.Kinds.class,
            description = "What befalls them; mixed unless given. One of ${COMPLETION-CANDIDATES}.")
    private String kind = VariedCooks.MIXED;

    @Option(
            names = "--by-hand",
            paramLabel = "EVERY",
            description = "As if somebody read the thermometer so often and typed it, such as 60s or 2min.")
    private @Nullable String byHand;

    @Option(
            names = "--marks",
            paramLabel = "STEP",
            description = "With --by-hand: what is typed is rounded to that; 1C unless given, such as 0.5C or 1F.")
    private String marks = "1C";

    @Option(names = "--report", paramLabel = "FILE", description = "Also write a page with tables and pictures.")
    private @Nullable Path report;

    @Option(names = "--json", paramLabel = "FILE", description = "Also write the figures as JSON.")
    private @Nullable Path json;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = Output.of(spec);
        Evaluation evaluation = evaluation();
        if (report != null) {
            Files.writeString(report, evaluation.html(subject()));
        }
        if (json != null) {
            Files.writeString(json, evaluation.json(subject()));
        }
        out.print(evaluation.text());
        out.flush();
        return 0;
    }

    private Evaluation evaluation() throws IOException {
        if (simulate != null) {
            if (folder != null) {
                throw new MisuseException("give a folder or --simulate, not both");
            }
            if (simulate < 1 || simulate > 100_000) {
                throw new MisuseException("--simulate must be 1 to 100000, not " + simulate);
            }
            Optional<CookKind> of = VariedCooks.kind(kind);
            List<String> seeds = LongStream.range(seed, seed + simulate)
                    .mapToObj(Long::toString)
                    .toList();
            return evaluation(seeds, name -> VariedCooks.cook(of, Long.parseLong(name)));
        }
        if (folder == null) {
            throw new MisuseException("which traces? Name a folder of them, or give --simulate 300");
        }
        Path in = folder;
        return evaluation(traces(in), name -> Trace.read(in.resolve(name)));
    }

    private Evaluation evaluation(List<String> names, Function<String, Trace> read) {
        if (byHand == null) {
            return Evaluation.of(names, read);
        }
        ByHand typed = Understood.value(
                byHand, every -> new ByHand(Quantities.durationS(every), Quantities.differenceC(marks)));
        return Evaluation.byHand(names, read, typed);
    }

    private String subject() {
        return simulate == null
                ? "The traces in " + folder
                : (byHand == null ? "" : "Read by hand every " + byHand + " to " + marks + ": ")
                        + "Cooks drawn at random, " + kind + ", seeds " + seed + " to " + (seed + simulate - 1);
    }

    private static List<String> traces(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new CommandException("there is no folder " + folder);
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".csv"))
                    .sorted()
                    .toList();
            if (names.isEmpty()) {
                throw new CommandException(folder + " holds no traces; make some with spoonfall simulate varied");
            }
            return names;
        }
    }
}
