package spoonfall.cli.serve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Understood;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.clock.AwakeClock;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.store.Recorder;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.Probe;
import spoonfall.probe.Probes;

/** Which thermometer is in which pan; all are opened together, for several may share one line. */
final class PanProbes {
    private final List<PanEntry> pans;
    private final Optional<NamedSpec> canner;
    private final Map<String, Probe> opened = new HashMap<>();

    private PanProbes(List<PanEntry> pans, Optional<NamedSpec> canner) {
        this.pans = pans;
        this.canner = canner;
    }

    /**
     * The pans of a kitchen file, or the one pan of the options, which win over it.
     *
     * @param options each {@code KIND:PLACE,...}, with {@code NAME=} before it or not
     * @throws MisuseException if neither names a thermometer
     * @throws CommandException if a pan of the file has none
     */
    static PanProbes of(KitchenFile file, List<String> options) {
        if (!options.isEmpty()) {
            List<NamedSpec> named = Understood.value(() -> ProbeOptions.named(options, List.of()));
            return new PanProbes(
                    List.of(new PanEntry(PanEntry.ONLY, file.batch(), file.riseC(), named)), Optional.empty());
        }
        if (file.pans().isEmpty()) {
            throw new MisuseException("which thermometer? Give --probe auto:/dev/ttyUSB0; "
                    + "\"spoonfall ports\" lists the ports, --hand takes what you read yourself and type, "
                    + "\"spoonfall demo\" needs none");
        }
        for (PanEntry pan : file.pans()) {
            if (pan.probes().isEmpty()) {
                throw new CommandException("no thermometer is in the pan " + pan.name()
                        + "; give it a [[probe]] with pan = \"" + pan.name() + "\" in the kitchen file");
            }
        }
        return new PanProbes(file.pans(), file.canner());
    }

    /** Whether there is more than one pan. */
    boolean several() {
        return pans.size() > 1;
    }

    /** All thermometers, pan by pan, then the canner's. */
    List<NamedSpec> probes() {
        return Stream.concat(pans.stream().flatMap(pan -> pan.probes().stream()), canner.stream())
                .toList();
    }

    /** Where they are plugged in, such as {@code /dev/ttyUSB0, /dev/ttyUSB1}. */
    String places() {
        return probes().stream().map(probe -> probe.spec().place()).collect(Collectors.joining(", "));
    }

    /**
     * A kitchen for each pan.
     *
     * @param plan what to watch in a pan
     * @param recorder where the cooks of each pan and the jars are written down
     */
    Kitchens kitchens(Function<PanEntry, KitchenPlan> plan, Thermometry thermometry, Recorder recorder) {
        AwakeClock clockOfAll = AwakeClock.ofSystem();
        List<Kitchen> kitchens = pans.stream()
                .map(pan -> new Kitchen(
                        plan.apply(pan),
                        clock -> pan.probes().stream()
                                .map(one -> open(one, clock))
                                .toList(),
                        clockOfAll,
                        thermometry,
                        recorder.journal(pan.name())))
                .toList();
        return new Kitchens(
                kitchens,
                canner.map(probe -> new Canner(clock -> open(probe, clock), clockOfAll, thermometry)),
                recorder.diary("jars"),
                Optional.of(recorder.book()));
    }

    private Probe open(NamedSpec named, LongSupplier clock) {
        if (opened.isEmpty()) {
            Probes.openAll(probes(), clock).forEach(probe -> opened.put(probe.name(), probe));
        }
        Probe probe = opened.get(named.name());
        if (probe == null) {
            throw new IllegalStateException("the probe " + named.name() + " was not opened");
        }
        return probe;
    }
}
