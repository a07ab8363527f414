package spoonfall.probe.line;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds out how to read a device from the first lines it sends, says why, and refuses to guess between two
 * candidates. Pure: whoever listens decides for how long.
 */
public final class Recogniser {
    private static final double MOST = 0.8;
    private static final int MOST_LINES = 500;
    private static final double FEW_STRANGE = 0.25;

    /** So many lines that all have a name of their own are numbered, and no sensors. */
    private static final int NUMBERED = 5;

    private static final Pattern LABEL = Pattern.compile("\\W*([A-Za-z][\\w .-]*?)\\s*[:=].*");

    private final String port;
    private final int baud;
    private final Optional<TemperatureUnit> givenUnit;
    private final List<String> lines = new ArrayList<>();
    private int noise;
    private int overlong;
    private long bytes;
    private long strangeBytes;

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
        } else if (line instanceof LineSplitter.Line.TooLong) {
            overlong++;
        } else {
            noise++;
        }
    }

    /** Takes the first {@code count} bytes that came, whether or not they make up lines. */
    public void hear(byte[] came, int count) {
        bytes += count;
        for (int i = 0; i < count; i++) {
            boolean text = (came[i] >= ' ' && came[i] < 0x7f) || came[i] == '\n' || came[i] == '\r' || came[i] == '\t';
            strangeBytes += text ? 0 : 1;
        }
    }

    /** What the lines so far say. */
    public Verdict verdict() {
        if (noise > lines.size() || (lines.isEmpty() && strangeBytes > FEW_STRANGE * bytes)) {
            return refuse(port + " sends bytes that are no text at " + baud + " baud. Try another rate, such as text:"
                    + port + ",baud=" + otherBaud());
        }
        if (lines.isEmpty() && overlong > 0) {
            return refuse(port + " sends a line longer than " + LineSplitter.LONGEST
                    + " bytes, which is no reading. Set it to end each reading with a line end");
        }
        if (lines.isEmpty() && bytes > 0) {
            return refuse(port + " sends bytes but no whole line so far, at " + baud
                    + " baud. If it sends more often than every few seconds, try another rate, such as text:" + port
                    + ",baud=" + otherBaud());
        }
        if (lines.isEmpty()) {
            return new Verdict.Refused(port + " is open but sends nothing. Is the thermometer switched on?", false);
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
        Candidates candidates = new Candidates();
        fields.forEach((name, values) -> candidates.add(name, name, values, Optional.empty()));
        if (candidates.isEmpty()) {
            return refuse(port + " sends JSON without a field that could be a temperature, such as "
                    + shortened(lines.get(lines.size() - 1)));
        }
        Optional<Candidates.One> chosen = candidates.chosen();
        if (chosen.isEmpty()) {
            return refuse("Several fields could be the temperature: " + candidates.examples() + ". Name one: json:"
                    + port + ",field=" + candidates.firstKey());
        }
        UnitGuess unit = UnitGuess.of(givenUnit, chosen.get());
        return new Verdict.Recognised(
                new JsonLines(chosen.get().key(), unit.meaning()),
                "JSON lines; the temperature is field "
                        + Candidates.shortened(chosen.get().key()) + ", in " + unit.why());
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
        Map<String, List<Numbers.Found>> byLabel = new LinkedHashMap<>();
        for (String line : usual) {
            Matcher label = LABEL.matcher(line);
            byLabel.computeIfAbsent(label.matches() ? label.group(1) : "", n -> new ArrayList<>())
                    .add(Numbers.in(line, comma).get(0));
        }
        boolean numbered = byLabel.size() == usual.size() && usual.size() >= NUMBERED;
        if (byLabel.size() > 1 && !byLabel.containsKey("") && !numbered) {
            Candidates candidates = new Candidates();
            byLabel.forEach((label, numbers) -> candidates.addFound(label, label, numbers));
            return chosenOf("names", candidates, usual, comma);
        }
        UnitGuess unit = UnitGuess.of(
                givenUnit,
                Candidates.One.of(
                        "",
                        byLabel.keySet().iterator().next(),
                        byLabel.values().stream().flatMap(List::stream).toList()));
        return new Verdict.Recognised(
                new TextLines(Optional.empty(), unit.meaning(), comma),
                "One number a line" + (comma ? " with a decimal comma" : "") + ", in " + unit.why());
    }

    private Verdict columns(List<String> usual, boolean comma) {
        String last = usual.get(usual.size() - 1);
        int width = Columns.of(last, comma).size();
        List<String> heading = heading(Columns.separator(last, comma), width, comma);
        Candidates candidates = new Candidates();
        for (int i = 0; i < width; i++) {
            List<Numbers.Found> numbers = new ArrayList<>();
            for (String line : usual) {
                List<String> cells = Columns.of(line, comma);
                List<Numbers.Found> found = i < cells.size() ? Numbers.in(cells.get(i), comma) : List.of();
                if (found.size() == 1) {
                    numbers.add(found.get(0));
                }
            }
            String number = String.valueOf(i + 1);
            String title = i < heading.size() && !heading.get(i).isBlank() ? heading.get(i) : number;
            if (numbers.size() >= MOST * usual.size()) {
                candidates.addFound(number, title, numbers);
            }
        }
        return chosenOf("columns", candidates, usual, comma);
    }

    /** Reads the one candidate that can be told to be the temperature, or refuses. */
    private Verdict chosenOf(String what, Candidates candidates, List<String> usual, boolean comma) {
        if (candidates.isEmpty()) {
            return refuse(port + " sends several numbers a line and none is always a temperature, such as "
                    + shortened(usual.get(usual.size() - 1)));
        }
        Optional<Candidates.One> chosen = candidates.chosen();
        if (chosen.isEmpty()) {
            return refuse("Several " + what + " could be the temperature: " + candidates.examples()
                    + ". Name one: text:" + port + ",column=" + candidates.firstKey());
        }
        UnitGuess unit = UnitGuess.of(givenUnit, chosen.get());
        String why =
                chosen.get().saysSo() ? "the only one that says it is a temperature" : "the only one that could be";
        return new Verdict.Recognised(
                new TextLines(Optional.of(chosen.get().key()), unit.meaning(), comma),
                "Several " + what + "; the temperature is column "
                        + Candidates.shortened(chosen.get().title()) + ", " + why + ", in " + unit.why());
    }

    /**
     * The titles of the columns. Words between spaces are not believed, for a banner such as {@code
     * Temperature logger} looks the same.
     */
    private List<String> heading(char separator, int width, boolean comma) {
        return lines.stream()
                .filter(line -> Numbers.in(line, comma).isEmpty())
                .filter(line -> separator != ' ' && Columns.separator(line, comma) == separator)
                .map(line -> Columns.of(line, comma))
                .filter(cells -> cells.size() == width)
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

    private static String shortened(String line) {
        return "\"" + (line.length() > 40 ? line.substring(0, 39) + "…" : line) + "\"";
    }

    private static Verdict refuse(String why) {
        return new Verdict.Refused(why, true);
    }
}
