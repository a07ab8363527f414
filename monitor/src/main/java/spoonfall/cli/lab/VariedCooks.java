package spoonfall.cli.lab;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import java.util.stream.Stream;
import spoonfall.cli.option.MisuseException;
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
                .orElseThrow(() -> new MisuseException(
                        "unknown kind \"" + name + "\"; it can be " + String.join(", ", new Kinds()))));
    }

    /** The names of the kinds, as the help lists them. */
    static final class Kinds implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.concat(
                            Stream.of(MIXED), Arrays.stream(CookKind.values()).map(CookKind::wireName))
                    .iterator();
        }
    }

    static Trace cook(Optional<CookKind> kind, long seed) {
        return kind.map(one -> VariedCook.cook(one, seed)).orElseGet(() -> VariedCook.cook(seed));
    }
}
