package spoonfall.fuzz;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import spoonfall.canning.JarBatch;
import spoonfall.canning.Typed;
import spoonfall.probe.ProbeSpec;
import spoonfall.units.Quantities;

/** What cooks type: quantities, temperatures, probes and jars. */
final class TypedFuzz {
    private TypedFuzz() {}

    /** What is typed is refused in one line, or is a finite number, and the same when it is written and read again. */
    static void typed(byte[] input) {
        Cut cut = new Cut(input);
        int kind = cut.next() % 9;
        String text = cut.text();
        try {
            switch (kind) {
                case 0 -> finite(Quantities.elevationM(text));
                case 1 -> finite(Quantities.pressurePa(text));
                case 2 -> finite(Quantities.temperatureC(text));
                case 3 -> finite(Quantities.differenceC(text));
                case 4 -> finite(Quantities.durationS(text));
                case 5 -> finite(Quantities.factor(text));
                case 6 -> temperature(text);
                case 7 -> probe(text);
                default -> jars(text);
            }
        } catch (IllegalArgumentException e) {
            // What was typed is one line of at most a hundred characters wherever it comes from.
            if (text.length() <= 100 && text.chars().noneMatch(Character::isISOControl)) {
                Must.beOneLine(String.valueOf(e.getMessage()));
            }
        }
    }

    private static void finite(double value) {
        Must.hold(Double.isFinite(value), "a quantity of " + value);
    }

    private static void temperature(String text) {
        spoonfall.typed.Typed typed = spoonfall.typed.Typed.parse(text);
        finite(typed.temperatureC());
        Must.equal(again(typed.wire(), spoonfall.typed.Typed::parse), typed, "written and read again");
        Must.equal(again(typed.text(), spoonfall.typed.Typed::parse), typed, "written for people and read again");
    }

    private static void probe(String text) {
        ProbeSpec spec = ProbeSpec.parse(text);
        String options = spec.options().entrySet().stream()
                .map(one -> "," + one.getKey() + "=" + one.getValue())
                .collect(Collectors.joining());
        if (spec.kind() != ProbeSpec.Kind.HAND) {
            String written = spec.kind().wireName() + ":" + spec.place() + options;
            Must.equal(again(written, ProbeSpec::parse), spec, "written and read again");
        }
        finite(spec.limitC(100));
    }

    private static void jars(String text) {
        String[] parts = text.split("\\|", -1);
        Map<Integer, Optional<String>> said = new java.util.HashMap<>();
        for (int i = 0; i < parts.length; i++) {
            said.put(i, Optional.of(parts[i]).filter(part -> !part.isEmpty()));
        }
        Consumer<JarBatch> check = batch -> {
            finite(batch.elevationM());
            batch.headspaceMm().ifPresent(TypedFuzz::finite);
            batch.acidity().ifPresent(TypedFuzz::finite);
        };
        check.accept(new Typed(
                        said.getOrDefault(0, Optional.empty()),
                        said.getOrDefault(1, Optional.empty()),
                        said.getOrDefault(2, Optional.empty()),
                        said.getOrDefault(3, Optional.empty()),
                        said.getOrDefault(4, Optional.empty()),
                        said.getOrDefault(5, Optional.empty()),
                        said.getOrDefault(6, Optional.empty()),
                        said.getOrDefault(7, Optional.empty()),
                        said.getOrDefault(8, Optional.empty()),
                        said.getOrDefault(9, Optional.empty()))
                .batch());
    }

    /** What is written must be understood: a refusal of it is a finding, and not one of what was typed. */
    private static <T> T again(String written, java.util.function.Function<String, T> parse) {
        try {
            return parse.apply(written);
        } catch (IllegalArgumentException e) {
            throw new AssertionError("written but not understood: " + written, e);
        }
    }
}
