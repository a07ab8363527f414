package spoonfall.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.kitchen.CorrectedProbe;
import spoonfall.kitchen.KitchenFile;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeSpec;
import spoonfall.units.Quantities;

/** {@code spoonfall serve}: watches a real pan. */
@Command(
        name = "serve",
        description = "Watch a pan through a thermometer, and show the page.",
        footer = {
            "",
            "For example:",
            "  spoonfall serve --probe auto:/dev/ttyUSB0 --elevation 4068ft",
            "  spoonfall serve kitchen.toml"
        })
final class ServeCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "KITCHEN", description = "A kitchen file (TOML); options win over it.")
    private @Nullable Path file;

    @Option(
            names = "--probe",
            paramLabel = "PROBE",
            description =
                    "The thermometer: auto:PORT, text:PORT, json:PORT,field=NAME, modbus:PORT,register=N, scpi:PORT or trace:FILE; "
                            + "more options behind commas, such as baud=115200,unit=F,column=2.")
    private @Nullable String probe;

    @Option(names = "--name", paramLabel = "NAME", description = "The kitchen's name.")
    private @Nullable String name;

    @Option(names = "--batch", paramLabel = "BATCH", description = "What is being made.")
    private @Nullable String batch;

    @Option(
            names = "--speed",
            hidden = true,
            description =
                    "How fast the service's time passes; for trying it with a thermometer that is played at speed.")
    private String speed = "1";

    @Mixin
    private CookOptions cook = new CookOptions();

    @Mixin
    private PortOption port = new PortOption();

    @Override
    public Integer call() {
        KitchenFile kitchen = file == null ? KitchenFile.empty() : KitchenFile.read(file);
        KitchenFile.NamedProbe named = probe != null
                ? new KitchenFile.NamedProbe("pan", ProbeSpec.parse(probe))
                : kitchen.probe()
                        .orElseThrow(() -> new CommandException("which thermometer? Give --probe auto:/dev/ttyUSB0; "
                                + "\"spoonfall ports\" lists the ports, \"spoonfall demo\" needs none"));
        KitchenPlan plan = KitchenPlan.live(
                name != null ? name : kitchen.name().orElse(""),
                batch != null ? batch : kitchen.batch().orElse(""),
                cook.settings(kitchen),
                Quantities.factor(speed));
        Optional<CalibrationBook.Entry> calibration =
                CalibrationBook.ofUser().latest(named.spec().place());
        Logging.tellOfProbes();
        OptionalInt filePort = kitchen.port();
        return Service.runUntilStopped(
                plan,
                clock -> opened(named, calibration, clock),
                port.port(filePort),
                "watches " + named.spec().place(),
                Output.of(spec));
    }

    private static Probe opened(
            KitchenFile.NamedProbe named, Optional<CalibrationBook.Entry> calibration, LongSupplier clock) {
        Probe bare = named.spec().open(named.name(), clock);
        return calibration
                .<Probe>map(entry -> new CorrectedProbe(bare, entry.correction(), corrected(entry)))
                .orElse(bare);
    }

    private static String corrected(CalibrationBook.Entry entry) {
        String day = entry.at().toString().substring(0, 10);
        return String.format(
                Locale.ROOT,
                "corrected by %+.2f °C, checked in boiling water on %s",
                entry.correction().offsetC(),
                day);
    }
}
