package spoonfall.cli.serve;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spoonfall.announce.Announcer;
import spoonfall.announce.LocalProgram;
import spoonfall.cli.option.MisuseException;
import spoonfall.kitchen.file.KitchenHabits;

/** The options that let a program of this machine say what matters. */
final class AnnounceOptions {
    private static final long LONGEST_MILLIS = 20_000;

    @Option(
            names = "--announce",
            paramLabel = "COMMAND",
            description =
                    "Also run this program of this machine with each call as its last argument, such as espeak-ng "
                            + "or \"espeak-ng -s 140\". Words end at spaces, quotes keep one together; no shell is used.")
    private @Nullable String command;

    @Option(
            names = "--announce-unit",
            paramLabel = "UNIT",
            description = "In which unit it says temperatures: C unless given, or F.")
    private @Nullable String unit;

    /** The same, where a kitchen file may say it; options win over it. */
    Optional<Announcer> announcer(KitchenHabits habits) {
        if (command == null) {
            command = habits.announce().orElse(null);
            unit = unit == null ? habits.announceUnit().orElse(null) : unit;
        }
        return announcer();
    }

    /**
     * Who announces; empty if nobody is to.
     *
     * @throws MisuseException if a unit is given that there is not, or without a program
     * @throws IllegalArgumentException if there is no such program
     */
    Optional<Announcer> announcer() {
        if (command == null) {
            if (unit != null) {
                throw new MisuseException("--announce-unit needs --announce too, such as --announce espeak-ng");
            }
            return Optional.empty();
        }
        if (unit != null && !unit.equalsIgnoreCase("C") && !unit.equalsIgnoreCase("F")) {
            throw new MisuseException("--announce-unit must be C or F, not " + unit);
        }
        String path = System.getenv().getOrDefault("PATH", "");
        LocalProgram program = LocalProgram.of(command, path, LONGEST_MILLIS);
        return Optional.of(new Announcer(program, "F".equalsIgnoreCase(unit), System::nanoTime));
    }
}
