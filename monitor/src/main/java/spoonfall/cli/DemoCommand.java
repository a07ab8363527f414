package spoonfall.cli;

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
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.Pantry;
import spoonfall.log.memory.BatchMemory;
import spoonfall.physics.GelPoint;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;
import spoonfall.units.Quantities;

/** {@code spoonfall demo}: the page fed by a simulated cook. */
@Command(name = "demo", description = "Show the page with a sample cook, sped up. Needs no thermometer.")
final class DemoCommand implements Callable<Integer> {
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
        return Service.runUntilStopped(
                Service.onePan(
                                plan(trace, Quantities.factor(speed)),
                                clock -> List.of(new TraceProbe("pan", "a simulated cook", trace, clock)))
                        .remembering(BatchMemory.unrecorded(SampleBatches::batches))
                        .stocked(Pantry.of(SampleBatch.notes())),
                Optional.empty(),
                port.port(OptionalInt.empty()),
                announce.announcer(),
                "shows a sample cook",
                Output.of(spec));
    }

    /** The Hollin Bank kitchen with a recorded cook, which begins with its sugar in the pan. */
    static KitchenPlan plan(Trace trace, double speed) {
        double elevationM = trace.info().elevationM().orElse(0);
        double riseC = trace.info().riseC().orElse(GelPoint.DEFAULT_RISE_C);
        Optional<Instant> startedAt = trace.info().startedAt();
        return new KitchenPlan(
                        "Hollin Bank",
                        SampleBatch.NAME,
                        new CookSettings(WaterBoil.atElevation(elevationM), riseC),
                        KitchenPlan.Source.DEMO,
                        speed,
                        startedAt,
                        true)
                .with(UsualAfternoon.notes().without("soften"));
    }
}
