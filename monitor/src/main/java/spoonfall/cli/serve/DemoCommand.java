package spoonfall.cli.serve;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.PortOption;
import spoonfall.cli.option.Understood;
import spoonfall.cli.sample.SampleBatch;
import spoonfall.cli.sample.SampleCooks;
import spoonfall.cli.sample.SampleFolder;
import spoonfall.cli.sample.SampleTrace;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.CookJournal;
import spoonfall.log.DataFolder;
import spoonfall.log.store.Recorder;
import spoonfall.physics.GelPoint;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;
import spoonfall.units.Quantities;

/** {@code spoonfall demo}: the page fed by a simulated cook. */
@Command(name = "demo", description = "Show the page with a sample cook, sped up. Needs no thermometer.")
public final class DemoCommand implements Callable<Integer> {
    private static final String RECORDED = "The demo's pan is a recording: it goes on whatever you tap.";

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--speed", paramLabel = "TIMES", description = "How many times as fast as life; 20 unless given.")
    private String speed = "20";

    @Mixin
    private PortOption port = new PortOption();

    @Mixin
    private AnnounceOptions announce = new AnnounceOptions();

    @Override
    public Integer call() {
        Trace trace = SampleTrace.load();
        KitchenPlan plan = plan(trace, Understood.value(speed, Quantities::factor));
        DataFolder folder = SampleFolder.make();
        Recorder recorder = Recorder.open(folder.cooks());
        CookJournal journal = recorder.journal(PanEntry.ONLY);
        Kitchen kitchen = new Kitchen(
                plan,
                clock -> List.of(new TraceProbe("pan", "a simulated cook", trace, clock)),
                System::nanoTime,
                Thermometry.none(),
                journal);
        fillTheBook(folder, journal, plan);
        Output.of(spec).println(RECORDED);
        return Service.runUntilStopped(
                new Kitchens(List.of(kitchen), Optional.empty(), recorder.diary("jars"), Optional.of(recorder.book()))
                        .remembering(FolderMemory.of(folder))
                        .stocked(Pantry.of(SampleBatch.notes())),
                Optional.of(recorder),
                port.port(OptionalInt.empty()),
                announce.announcer(),
                "shows a sample cook",
                Output.of(spec));
    }

    /** The page does not wait for the book, which takes a second or two. */
    private static void fillTheBook(DataFolder folder, CookJournal journal, KitchenPlan plan) {
        Instant before = plan.startedAt().orElseGet(Instant::now);
        Thread thread = new Thread(
                () -> {
                    journal.lastNumber(); // answered when the recorder has made the file
                    SampleCooks.write(folder, plan.settings(), before);
                },
                "sample-cooks");
        thread.setDaemon(true);
        thread.start();
    }

    /** The Hollin Bank kitchen with a recorded cook, which begins with its sugar in the pan. */
    static KitchenPlan plan(Trace trace, double speed) {
        double elevationM = trace.info().elevationM().orElse(0);
        double riseC = trace.info().riseC().orElse(GelPoint.DEFAULT_RISE_C);
        Optional<Instant> startedAt = trace.info().startedAt();
        return new KitchenPlan(
                        SampleCooks.KITCHEN,
                        SampleBatch.NAME,
                        new CookSettings(WaterBoil.atElevation(elevationM), riseC),
                        KitchenPlan.Source.DEMO,
                        speed,
                        startedAt,
                        true)
                .with(UsualAfternoon.notes().without("soften"));
    }
}
