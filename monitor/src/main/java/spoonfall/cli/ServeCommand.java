package spoonfall.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.kitchen.KitchenFile;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.Thermometry;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Probes;
import spoonfall.probe.serial.SerialPorts;
import spoonfall.units.Quantities;

/** {@code spoonfall serve}: watches a real pan. */
@Command(
        name = "serve",
        description = "Watch a pan through a thermometer, and show the page.",
        footer = {
            "",
            "For example:",
            "  spoonfall serve --probe auto:/dev/ttyUSB0 --elevation 4068ft",
            "  spoonfall serve --hand --elevation 1240m",
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
                    "The thermometer: auto:PORT, text:PORT, json:PORT,field=NAME, modbus:PORT,register=N, scpi:PORT, trace:FILE or hand; "
                            + "more options behind commas, such as baud=115200,unit=F,column=2. "
                            + "Give it again for another thermometer in the same pan, named or not: "
                            + "--probe clip=auto:/dev/ttyUSB1. The cook follows the first.")
    private List<String> probes = List.of();

    @Option(names = "--hand", description = "No cable: you read the thermometer, and type on the page what it shows.")
    private boolean hand;

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

    private List<NamedSpec> named(KitchenFile kitchen) {
        if (!hand) {
            return ProbeOptions.named(probes, kitchen.probes());
        }
        if (!probes.isEmpty()) {
            throw new CommandException("give --hand or --probe, not both; --probe hand is the same as --hand");
        }
        return ProbeOptions.named(List.of(ProbeSpec.Kind.HAND.wireName()), List.of());
    }

    @Override
    public Integer call() {
        KitchenFile kitchen = file == null ? KitchenFile.empty() : KitchenFile.read(file);
        List<NamedSpec> named = named(kitchen);
        if (named.isEmpty()) {
            throw new CommandException("which thermometer? Give --probe auto:/dev/ttyUSB0; "
                    + "\"spoonfall ports\" lists the ports, --hand takes what you read yourself and type, "
                    + "\"spoonfall demo\" needs none");
        }
        CalibrationBook book = CalibrationBook.ofUser();
        ProbeOptions.refuseStrangers(named, book, SerialPorts.STABLE_LINKS);
        KitchenPlan plan = KitchenPlan.live(
                name != null ? name : kitchen.name().orElse(""),
                batch != null ? batch : kitchen.batch().orElse(""),
                cook.settings(kitchen),
                Quantities.factor(speed));
        Logging.tellOfProbes();
        PrintWriter out = Output.of(spec);
        Thermometry thermometry = Thermometry.of(named, book, cook.declared(kitchen));
        OptionalInt filePort = kitchen.port();
        return Service.runUntilStopped(
                plan,
                clock -> Probes.openAll(named, clock),
                thermometry,
                port.port(filePort),
                "watches "
                        + String.join(
                                ", ",
                                named.stream().map(one -> one.spec().place()).toList()),
                out);
    }
}
