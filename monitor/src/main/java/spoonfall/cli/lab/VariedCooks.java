package spoonfall.cli.lab;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import spoonfall.cli.option.CommandException;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.probe.trace.Trace;

/** Cooks drawn at random, as the command line names them. */
final class VariedCooks {
    /** Chance decides about the kind as well. */
    static final String MIXED = "mixed";

    private VariedCooks() {}

    /** The kind of that name; empty for {@link #MIXED}. */
    static Optional<CookKind> kind(String name) {
        if (name.equals(MIXED)) {
            return Optional.empty();
        }
        return Optional.of(Arrays.stream(CookKind.values())
                .filter(kind -> kind.wireName().equals(name))
                .findFirst()
                .orElseThrow(() -> new CommandException("unknown kind \"" + name + "\"; it can be mixed, "
                        + Arrays.stream(CookKind.values())
                                .map(CookKind::wireName)
                                .collect(Collectors.joining(", ")))));
    }

    static Trace cook(Optional<CookKind> kind, long seed) {
        return kind.map(one -> VariedCook.cook(one, seed)).orElseGet(() -> VariedCook.cook(seed));
    }
}
