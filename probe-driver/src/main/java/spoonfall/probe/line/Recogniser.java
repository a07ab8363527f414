package spoonfall.probe.line;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spoonfall.probe.Reading;

/**
 * Finds out how to read a device from the first lines it sends, says why, and refuses to guess between two
 * candidates. Pure: whoever listens decides for how long.
 */
public final class Recogniser {
    private static final double MOST = 0.8;
    private static final int MOST_LINES = 500;
    private static final double SURELY_F = 130;
    private static final double SURELY_K = 250;

    private final String port;
    private final int baud;
    private final Optional<TemperatureUnit> givenUnit;
    private final List<String> lines = new ArrayList<>();
    private int noise;

    /** What came of listening. */
    public sealed interface Verdict {
        /**
         * The device is understood.
         *
         * @param format how to read it
         * @param why one sentence
         */
        record Recognised(LineFormat format, String why) implements Verdict {}

        /**
         * It is not.
         *
         * @param why one sentence, with the way out
         * @param heard whether anything came at all
         */
        record Refused(String why, boolean heard) implements Verdict {}
    }

    /**
     * A recogniser that has heard nothing.
     *
     * @param port the port's path, for the sentences
     * @param baud the rate it is listened to with, for the sentences
     * @param givenUnit the unit, if the cook gave it
     */
    public Recogniser(String port, int baud, Optional<TemperatureUnit> givenUnit) {
        this.port = port;
        this.baud = baud;
        this.givenUnit = givenUnit;
    }

    /** Takes what came. */
    public void hear(LineSplitter.Line line) {
        if (line instanceof LineSplitter.Line.Text text) {
            if (lines.size() < MOST_LINES) {
                lines.add(text.text());
            }
        } else {
            noise++;
        }
    }

    /** What the lines so far say. */
    public Verdict verdict() {
        if (lines.isEmpty() && noise == 0) {
            return new Verdict.Refused(port + " is open but sends nothing. Is the thermometer switched on?", false);
        }
        if (noise > lines.size()) {
            return refuse(port + " sends bytes that are no text at " + baud + " baud. Try another rate, such as text:"
                    + port + ",baud=" + otherBaud());
        }
        List<JsonNode> objects =
                lines.stream().map(JsonLines::object).flatMap(Optional::stream).toList();
        return objects.size() >= MOST * lines.size() ? json(objects) : text();
    }

    private String otherBaud() {
        return baud == 9600 ? "115200" : "9600";
    }

    private Verdict json(List<JsonNode> objects) {
        Map<String, List<Double>> fields = new LinkedHashMap<>();
        objects.forEach(object -> collect("", object, fields));
        fields.values().removeIf(values -> !plausible(values));
        if (fields.isEmpty()) {
            return refuse(port + " sends JSON without a field that could be a temperature, such as "
                    + shortened(lines.get(lines.size() - 1)));
        }
        List<String> named =
                fields.keySet().stream().filter(Recogniser::saysTemperature).toList();
        if (fields.size() > 1 && named.size() != 1) {
            return refuse("Several fields could be the temperature: " + examples(fields) + ". Name one: json:" + port
                    + ",field=" + fields.keySet().iterator().next());
        }
        String field =
                named.size() == 1 ? named.get(0) : fields.keySet().iterator().next();
        Guess unit = guess(fields.getOrDefault(field, List.of()), Optional.empty());
        return new Verdict.Recognised(
                new JsonLines(field, Optional.of(unit.unit())),
                "JSON lines; the temperature is field " + field + ", in " + unit.why());
    }

    private static void collect(String prefix, JsonNode object, Map<String, List<Double>> fields) {
        object.properties().forEach(field -> {
            String name = prefix + field.getKey();
            if (field.getValue().isNumber()) {
                fields.computeIfAbsent(name, n -> new ArrayList<>())
                        .add(field.getValue().doubleValue());
            } else if (field.getValue().isObject() && prefix.length() < 200) {
                collect(name + ".", field.getValue(), fields);
            }
        });
    }

    private Verdict text() {
        boolean comma = decimalComma();
        Map<Integer, List<String>> byCount = new TreeMap<>();
        for (String line : lines) {
            byCount.computeIfAbsent(Numbers.in(line, comma).size(), n -> new ArrayList<>())
                    .add(line);
        }
        for (Map.Entry<Integer, List<String>> entry : byCount.entrySet()) {
            boolean usual = entry.getValue().size() >= MOST * (lines.size() - headings());
            if (usual && entry.getKey() == 1) {
                return oneNumber(entry.getValue(), comma);
            }
            if (usual && entry.getKey() > 1) {
                return columns(entry.getValue(), comma);
            }
        }
        return refuse(port + " sends lines without a number that could be a temperature, such as "
                + shortened(lines.get(lines.size() - 1)));
    }

    /** Lines without any number: a banner or column headings. */
    private long headings() {
        return lines.stream().filter(line -> Numbers.in(line, false).isEmpty()).count();
    }

    private Verdict oneNumber(List<String> usual, boolean comma) {
        List<Numbers.Found> numbers =
                usual.stream().map(line -> Numbers.in(line, comma).get(0)).toList();
        Guess unit = guess(
                numbers.stream().map(Numbers.Found::value).toList(),
                numbers.stream().flatMap(n -> n.unit().stream()).findFirst());
        return new Verdict.Recognised(
                new TextLines(Optional.empty(), Optional.of(unit.unit()), comma),
                "One number a line" + (comma ? " with a decimal comma" : "") + ", in " + unit.why());
    }

    private Verdict columns(List<String> usual, boolean comma) {
        List<String> heading = heading(comma);
        Map<String, List<Double>> candidates = new LinkedHashMap<>();
        List<String> withUnit = new ArrayList<>();
        Optional<TemperatureUnit> writtenUnit = Optional.empty();
        int width = Columns.of(usual.get(usual.size() - 1), comma).size();
        for (int i = 0; i < width; i++) {
            List<Double> values = new ArrayList<>();
            Optional<TemperatureUnit> unit = Optional.empty();
            for (String line : usual) {
                List<String> cells = Columns.of(line, comma);
                List<Numbers.Found> found = i < cells.size() ? Numbers.in(cells.get(i), comma) : List.of();
                if (found.size() == 1) {
                    values.add(found.get(0).value());
                    unit = unit.or(found.get(0)::unit);
                }
            }
            if (values.size() >= MOST * usual.size() && plausible(values)) {
                String name = i < heading.size() ? heading.get(i) : String.valueOf(i + 1);
                candidates.put(name, values);
                if (unit.isPresent() || saysTemperature(name)) {
                    withUnit.add(name);
                    writtenUnit = unit;
                }
            }
        }
        if (candidates.isEmpty()) {
            return refuse(port + " sends several numbers a line and none is always a temperature, such as "
                    + shortened(usual.get(usual.size() - 1)));
        }
        if (candidates.size() > 1 && withUnit.size() != 1) {
            return refuse("Several columns could be the temperature: " + examples(candidates) + ". Name one: text:"
                    + port + ",column=" + candidates.keySet().iterator().next());
        }
        String column = withUnit.size() == 1
                ? withUnit.get(0)
                : candidates.keySet().iterator().next();
        Guess unit = guess(candidates.getOrDefault(column, List.of()), writtenUnit);
        String why = withUnit.size() == 1 ? "the only one that says it is a temperature" : "the only one that could be";
        return new Verdict.Recognised(
                new TextLines(Optional.of(column), Optional.of(unit.unit()), comma),
                "Several columns; the temperature is column " + column + ", " + why + ", in " + unit.why());
    }

    private List<String> heading(boolean comma) {
        return lines.stream()
                .filter(line -> Numbers.in(line, comma).isEmpty())
                .map(line -> Columns.of(line, comma))
                .filter(cells -> cells.size() > 1)
                .findFirst()
                .orElse(List.of());
    }

    /** Whether commas are decimal signs: one comma in every line with digits close on both sides, no point. */
    private boolean decimalComma() {
        return lines.stream().allMatch(line -> line.indexOf('.') < 0)
                && lines.stream()
                                .filter(line -> line.matches("\\D*\\d+,\\d{1,2}(\\D.*)?"))
                                .count()
                        >= MOST * lines.size()
                && lines.stream().allMatch(line -> line.indexOf(',') == line.lastIndexOf(',') || line.contains(";"));
    }

    private record Guess(TemperatureUnit unit, String why) {}

    private Guess guess(List<Double> values, Optional<TemperatureUnit> written) {
        if (givenUnit.isPresent()) {
            return new Guess(givenUnit.get(), givenUnit.get().sign() + " as you said");
        }
        if (written.isPresent()) {
            return new Guess(written.get(), written.get().sign() + " as it says");
        }
        double[] sorted = values.stream()
                .mapToDouble(v -> v)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        double middle = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
        if (middle > SURELY_K) {
            return new Guess(TemperatureUnit.K, "K, since no pan is that hot in °C or °F");
        }
        if (middle > SURELY_F) {
            return new Guess(TemperatureUnit.F, "°F, since no pan of preserve is that hot in °C");
        }
        return new Guess(TemperatureUnit.C, "°C, since it names no unit (if that is wrong, add unit=F)");
    }

    private static boolean plausible(List<Double> values) {
        return values.stream().allMatch(v -> v.isNaN() || (v >= Reading.LOWEST_C && v <= Reading.HIGHEST_C))
                && values.stream().anyMatch(v -> !v.isNaN());
    }

    private static boolean saysTemperature(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.contains("temp") || lower.endsWith("_c") || lower.endsWith("_f") || lower.endsWith("celsius");
    }

    private static String examples(Map<String, List<Double>> candidates) {
        StringBuilder text = new StringBuilder();
        candidates.forEach((name, values) -> text.append(text.isEmpty() ? "" : ", ")
                .append(name)
                .append(" (")
                .append(values.get(values.size() - 1))
                .append(')'));
        return text.toString();
    }

    private static String shortened(String line) {
        return "\"" + (line.length() > 40 ? line.substring(0, 39) + "…" : line) + "\"";
    }

    private static Verdict refuse(String why) {
        return new Verdict.Refused(why, true);
    }
}
