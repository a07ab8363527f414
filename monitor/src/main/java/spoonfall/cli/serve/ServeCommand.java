package spoonfall.cli.serve;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.cli.door.NetworkOptions;
import spoonfall.cli.option.CookOptions;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cli.option.Logging;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.PortOption;
import spoonfall.cli.option.Understood;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.kitchen.file.NotesFile;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.CalibrationBook;
import spoonfall.log.store.Recorder;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.serial.SerialPorts;
import spoonfall.units.Quantities;
import spoonfall.web.door.NetworkDoor;

/** {@code spoonfall serve}: watches a real pan. */
@Command(
        name = "serve",
        description = "Watch a pan through a thermometer, and show the page.",
        footer = {
            "",
            "For example:",
            "  spoonfall serve --probe auto:/dev/ttyUSB0 --elevation 4068ft",
            "  spoonfall serve --hand --elevation 1240m",
            "  spoonfall serve kitchen.toml",
            "  spoonfall serve kitchen.toml --lan"
        })
public final class ServeCommand implements Callable<Integer> {
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
            names = "--notes",
            paramLabel = "NOTES",
            description = "Batch notes (TOML): how this batch differs from a usual afternoon.")
    private @Nullable Path notes;

    @Option(
            names = "--speed",
            hidden = true,
            description =
                    "How fast the service's time passes; for trying it with a thermometer that is played at speed.")
    private String speed = "1";

    @Mixin
    private CookOptions cook = new CookOptions();

    @Mixin
    private DataOption data = new DataOption();

    @Mixin
    private PortOption port = new PortOption();

    @Mixin
    private NetworkOptions network = new NetworkOptions();

    @Mixin
    private AnnounceOptions announce = new AnnounceOptions();

    private List<String> byHand() {
        if (!probes.isEmpty()) {
            throw new MisuseException("give --hand or --probe, not both; --probe hand is the same as --hand");
        }
        return List.of(ProbeSpec.Kind.HAND.wireName());
    }

    @Override
    public Integer call() {
        KitchenFile kitchen = file == null ? KitchenFile.empty() : KitchenFile.read(file);
        PanProbes pans = PanProbes.of(kitchen, hand ? byHand() : probes);
        if (pans.several() && (batch != null || cook.measured())) {
            throw new MisuseException("--batch and --water-boil are about one pan, and " + file + " has several; "
                    + "write the batch there, and check each thermometer on the page");
        }
        CalibrationBook book = data.folder().calibrations();
        ProbeOptions.refuseStrangers(pans.probes(), book, SerialPorts.STABLE_LINKS);
        Logging.tellOfProbes();
        Thermometry thermometry = Thermometry.of(pans.probes(), book, cook.declared(kitchen));
        int pagePort = port.port(kitchen.port());
        Optional<NetworkDoor> door = network.door(kitchen.network(), pagePort, data.folder());
        Recorder recorder =
                Recorder.open(data.folder().cooks(), kitchen.habits().keep());
        Kitchens kitchens;
        try {
            kitchens = pans.kitchens(pan -> plan(kitchen, pan), thermometry, recorder)
                    .remembering(FolderMemory.of(data.folder()))
                    .stocked(Pantry.of(data.folder().foods(), data.folder().hob(), Optional.ofNullable(notes)));
        } catch (RuntimeException e) {
            recorder.close();
            throw e;
        }
        return Service.runUntilStopped(
                kitchens,
                Optional.of(recorder),
                pagePort,
                door,
                announce.announcer(kitchen.habits()),
                "watches " + pans.places(),
                Output.of(spec));
    }

    private KitchenPlan plan(KitchenFile kitchen, PanEntry pan) {
        return KitchenPlan.live(
                        name != null ? name : kitchen.name().orElse(""),
                        batch != null ? batch : pan.batch().orElse(""),
                        cook.settings(kitchen, pan.riseC()),
                        Understood.value(speed, Quantities::factor))
                .inPan(pan.name())
                .with(Optional.ofNullable(notes)
                        .or(() -> kitchen.habits().notes())
                        .map(NotesFile::read)
                        .orElseGet(UsualAfternoon::notes));
    }
}
