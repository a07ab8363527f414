package spoonfall.cli.lab;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.lab.PanSettings;
import spoonfall.lab.Scenario;
import spoonfall.lab.Simulator;
import spoonfall.lab.varied.CookKind;
import spoonfall.probe.trace.Trace;
import spoonfall.units.Quantities;

/** {@code spoonfall simulate}: makes labelled traces from a physical pan. */
@Command(
        name = "simulate",
        description = "Make labelled traces from a simulated pan.",
        footer = {
            "",
            "For example:",
            "  spoonfall simulate stall --seed 7 --into traces",
            "  spoonfall simulate all",
            "  spoonfall simulate varied --count 20 --seed 1 --into traces"
        })
public final class SimulateCommand implements Callable<Integer> {
    private static final String ALL = "all";
    private static final String VARIED = "varied";

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "SCENARIO",
            completionCandidates = Names.class,
            description =
                    "What happens: a scenario by its name; all of them; or varied, which draws everything at random. "
                            + "One of ${COMPLETION-CANDIDATES}.")
    private String scenario = "";

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the chance in it; 1 unless given.")
    private long seed = 1;

    @Option(names = "--count", paramLabel = "N", description = "How many, with seeds from --seed upwards.")
    private int count = 1;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            completionCandidates = VariedCooks.Kinds.class,
            description = "What befalls a varied cook; mixed unless given. One of ${COMPLETION-CANDIDATES}.")
    private String kind = VariedCooks.MIXED;

    @Option(names = "--into", paramLabel = "FOLDER", description = "Where the files go; here unless given.")
    private Path into = Path.of("");

    @Option(names = "--force", description = "Write over files that are there.")
    private boolean force;

    @Option(names = "--elevation", paramLabel = "HEIGHT", description = "Height of the kitchen; 1240m unless given.")
    private @Nullable String elevation;

    @Option(names = "--rise", paramLabel = "RISE", description = "Where it sets above boiling water; 8F unless given.")
    private @Nullable String rise;

    @Option(names = "--mass", paramLabel = "KG", description = "What is in the pan, in kg.")
    private double massKg = PanSettings.defaults().massKg();

    @Option(names = "--solids", paramLabel = "PART", description = "The part of it that is sugar, such as 0.4.")
    private double solids = PanSettings.defaults().solids();

    @Option(names = "--power", paramLabel = "KW", description = "Net heat in kW.")
    private double powerKw = PanSettings.defaults().netPowerKw();

    @Option(names = "--period", paramLabel = "S", description = "Seconds between two readings.")
    private double periodS = PanSettings.defaults().periodS();

    @Override
    public Integer call() throws IOException {
        if (count < 1 || count > 10_000) {
            throw new MisuseException("--count must be 1 to 10000, not " + count);
        }
        PanSettings pan = Understood.value(this::pan);
        Files.createDirectories(into);
        if (scenario.equals(VARIED)) {
            Optional<CookKind> of = VariedCooks.kind(kind);
            refuseOptionsOfThePan();
            for (int i = 0; i < count; i++) {
                write(VARIED, VariedCooks.cook(of, seed + i), seed + i, Output.of(spec));
            }
            return 0;
        }
        for (Scenario each : scenarios()) {
            for (int i = 0; i < count; i++) {
                write(each.wireName(), Simulator.cook(each, pan, seed + i), seed + i, Output.of(spec));
            }
        }
        return 0;
    }

    private PanSettings pan() {
        PanSettings defaults = PanSettings.defaults();
        return new PanSettings(
                massKg,
                solids,
                defaults.startC(),
                powerKw,
                elevation == null ? defaults.elevationM() : Quantities.elevationM(elevation),
                rise == null ? defaults.riseC() : Quantities.differenceC(rise),
                periodS,
                defaults.lagS(),
                defaults.noiseC(),
                defaults.resolutionC());
    }

    private void refuseOptionsOfThePan() {
        if (spec != null) {
            ParseResult parsed = spec.commandLine().getParseResult();
            for (String option : List.of("--elevation", "--rise", "--mass", "--solids", "--power", "--period")) {
                if (parsed.hasMatchedOption(option)) {
                    throw new MisuseException(option + " is drawn at random in a varied cook; leave it out");
                }
            }
        }
    }

    private void write(String name, Trace trace, long itsSeed, PrintWriter out) {
        Path csv = into.resolve(name + (count == 1 ? "" : "-" + itsSeed) + ".csv");
        if (Files.exists(csv) && !force) {
            throw new CommandException(csv + " is there already; name another folder with --into, or add --force");
        }
        trace.write(csv);
        String labels = trace.info().labels().stream()
                .map(label -> label.what() + " " + Math.round(label.t()) + " s")
                .collect(Collectors.joining(", "));
        out.println(csv + ": " + trace.size() + " readings; " + labels);
    }

    private List<Scenario> scenarios() {
        if (scenario.equals(ALL)) {
            return List.of(Scenario.values());
        }
        return Arrays.stream(Scenario.values())
                .filter(each -> each.wireName().equals(scenario))
                .findFirst()
                .map(List::of)
                .orElseThrow(() -> new MisuseException(
                        "unknown scenario \"" + scenario + "\"; it can be " + String.join(", ", new Names())));
    }

    /** What the scenario may be, as the help lists it. */
    private static final class Names implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.of(
                            Stream.of(ALL), Arrays.stream(Scenario.values()).map(Scenario::wireName), Stream.of(VARIED))
                    .flatMap(names -> names)
                    .iterator();
        }
    }
}
