package spoonfall.probe.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import spoonfall.probe.Reading;

/** The columns, names or fields of a device that could be its temperature. */
final class Candidates {
    /** As many as a sentence takes. */
    private static final int MOST_EXAMPLES = 6;

    private static final int LONGEST_TITLE = 40;

    private final List<One> all = new ArrayList<>();

    /**
     * One that could be.
     *
     * @param key how a cook writes it: a column's number, the name before a value, or a field's path
     * @param title what it is called, for people
     * @param values what it was so far
     * @param unit the unit written behind the values
     */
    record One(String key, String title, List<Double> values, Optional<TemperatureUnit> unit) {
        static One of(String key, String title, List<Numbers.Found> numbers) {
            return new One(
                    key,
                    title,
                    numbers.stream().map(Numbers.Found::value).toList(),
                    numbers.stream().flatMap(n -> n.unit().stream()).findFirst());
        }

        /** Whether its unit or its title says that it is a temperature. */
        boolean saysSo() {
            String lower = title.toLowerCase(Locale.ROOT);
            return unit.isPresent()
                    || TemperatureUnit.inName(title).isPresent()
                    || lower.contains("temp")
                    || lower.endsWith("_c")
                    || lower.endsWith("_f");
        }

        private boolean plausible() {
            return values.stream().allMatch(v -> v.isNaN() || (v >= Reading.LOWEST_C && v <= Reading.HIGHEST_C))
                    && values.stream().anyMatch(v -> !v.isNaN());
        }
    }

    /** Takes one, if its values could be temperatures. */
    void add(String key, String title, List<Double> values, Optional<TemperatureUnit> unit) {
        add(new One(key, title, values, unit));
    }

    /** Takes one by the numbers found in it, if they could be temperatures. */
    void addFound(String key, String title, List<Numbers.Found> numbers) {
        add(One.of(key, title, numbers));
    }

    private void add(One one) {
        if (one.plausible()) {
            all.add(one);
        }
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** The only one, or the only one that says it is a temperature; empty rather than a guess. */
    Optional<One> chosen() {
        if (all.size() == 1) {
            return Optional.of(all.get(0));
        }
        List<One> saying = all.stream().filter(One::saysSo).toList();
        return saying.size() == 1 ? Optional.of(saying.get(0)) : Optional.empty();
    }

    /** How a cook writes the first of them. */
    String firstKey() {
        return shortened(all.get(0).key());
    }

    /** The first of them with their latest values, such as {@code 1 (98.4), 2 (23.1)}. */
    String examples() {
        String first = all.stream()
                .limit(MOST_EXAMPLES)
                .map(one -> shortened(one.title()) + " ("
                        + one.values().get(one.values().size() - 1) + ")")
                .collect(Collectors.joining(", "));
        return all.size() > MOST_EXAMPLES ? first + " and " + (all.size() - MOST_EXAMPLES) + " more" : first;
    }

    /** A title as it is shown: a device may send whole lines as the name of a field. */
    static String shortened(String title) {
        String line = title.replaceAll("\\p{Cntrl}", "·");
        return line.length() > LONGEST_TITLE ? line.substring(0, LONGEST_TITLE - 1) + "…" : line;
    }
}
