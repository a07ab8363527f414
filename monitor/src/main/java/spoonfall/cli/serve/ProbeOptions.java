package spoonfall.cli.serve;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoonfall.cli.option.CommandException;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.ProbeSpec;

/** The thermometers that the options or the kitchen file name. */
final class ProbeOptions {
    private ProbeOptions() {}

    /**
     * The thermometers in order; options win over the file.
     *
     * @param options each {@code KIND:PLACE,...}, with {@code NAME=} before it or not
     */
    static List<NamedSpec> named(List<String> options, List<NamedSpec> fromFile) {
        if (options.isEmpty()) {
            return fromFile;
        }
        List<NamedSpec> named = new ArrayList<>();
        for (String option : options) {
            int equals = option.indexOf('=');
            int colon = option.indexOf(':');
            boolean hasName = equals >= 0 && (equals < colon || colon < 0);
            String name = hasName ? option.substring(0, equals).strip() : KitchenFile.nameOf(named.size());
            named.add(new NamedSpec(name, ProbeSpec.parse(option.substring(hasName ? equals + 1 : 0))));
        }
        return named;
    }

    /**
     * Refuses a thermometer that stands where another one was calibrated: its correction would be a stranger's.
     *
     * @param links the folder of links that stay when the system names devices anew
     */
    static void refuseStrangers(List<NamedSpec> probes, CalibrationBook book, Path links) {
        for (NamedSpec probe : probes) {
            String place = probe.spec().place();
            String identity = probe.spec().identity(links);
            Optional<CalibrationBook.Entry> stranger = book.madeWithAnother(identity, place);
            if (stranger.isPresent() && Files.exists(Path.of(place))) {
                throw new CommandException(probe.name() + ": the calibration for " + place + " was made with "
                        + stranger.get().probe() + ", and now " + identity
                        + " is there; calibrate this one (\"spoonfall calibrate\"), or name the place that stays: --probe "
                        + probe.spec().kind().wireName() + ":" + stranger.get().probe());
            }
        }
    }
}
