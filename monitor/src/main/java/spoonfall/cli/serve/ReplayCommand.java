package spoonfall.cli.serve;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.cli.log.EventLines;
import spoonfall.cli.option.CookOptions;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.PortOption;
import spoonfall.cli.option.Understood;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;
import spoonfall.units.Quantities;
import spoonfall.web.view.Views;
import spoonfall.web.wire.WireJson;

/** {@code spoonfall replay}: runs a recorded cook through the monitor. */
@Command(
        name = "replay",
        description = "Run a recorded cook through the monitor: as a picture, as JSON lines or on the page.",
        footer = {
            "",
            "A trace is CSV with the heading elapsed_s,temperature_c. Options win over its metadata.",
            "",
            "For example:",
            "  spoonfall replay sample-traces/stall.csv",
            "  spoonfall replay sample-traces/stall.csv --page --speed 30",
            "  spoonfall replay --speed max --json cook.csv --elevation 1240m --rise 4.4C"
        })
public final class ReplayCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "TRACE", description = "The recorded cook.")
    private Path file = Path.of("");

    @Option(
            names = "--speed",
            paramLabel = "TIMES",
            description = "How many times as fast as life, or max; 20 on the page and max elsewhere unless given.")
    private @Nullable String speed;

    @Option(names = "--json", description = "Print one JSON object a line: a status every 10 s, stages and alarms.")
    private boolean json;

    @Option(names = "--page", description = "Show it on the page.")
    private boolean page;

    @Mixin
    private CookOptions cook = new CookOptions();

    @Mixin
    private PortOption port = new PortOption();

    @Override
    public Integer call() throws InterruptedException {
        if (page && json) {
            throw new MisuseException("give --page or --json, not both");
        }
        Trace trace = Trace.read(file);
        CookSettings settings = cook.settings(trace.info());
        PrintWriter out = Output.of(spec);
        if (page) {
            return showOnPage(trace, settings, out);
        }
        EventLines lines = new EventLines(out);
        Consumer<CookEvent> sink = event -> {
            if (json) {
                out.println(WireJson.text(Views.event(event, settings)));
            } else {
                lines.print(event);
            }
        };
        play(trace, settings, sink);
        if (!json) {
            ClimbPicture.print(out, trace, settings);
        }
        out.flush();
        return 0;
    }

    private int showOnPage(Trace trace, CookSettings settings, PrintWriter out) {
        if ("max".equals(speed)) {
            throw new MisuseException("the page needs a speed it can show, such as --speed 20");
        }
        KitchenPlan plan = new KitchenPlan(
                "",
                trace.info().title(),
                settings,
                KitchenPlan.Source.REPLAY,
                speed == null ? 20 : Understood.value(speed, Quantities::factor),
                trace.info().startedAt(),
                false);
        return Service.runUntilStopped(
                Service.onePan(plan, clock -> List.of(new TraceProbe("pan", file.toString(), trace, clock))),
                Optional.empty(),
                port.port(OptionalInt.empty()),
                Optional.empty(),
                "replays " + file,
                out);
    }

    private void play(Trace trace, CookSettings settings, Consumer<CookEvent> sink) throws InterruptedException {
        TraceReplay replay = new TraceReplay(trace, settings);
        double times = speed == null || speed.equals("max")
                ? Double.POSITIVE_INFINITY
                : Understood.value(speed, Quantities::factor);
        long startNanos = System.nanoTime();
        while (replay.hasNext()) {
            long dueNanos = (long) (replay.nextS() / times * 1e9);
            long waitNanos = dueNanos - (System.nanoTime() - startNanos);
            if (waitNanos > 0) {
                TimeUnit.NANOSECONDS.sleep(waitNanos);
            }
            replay.next().forEach(sink);
        }
    }
}
