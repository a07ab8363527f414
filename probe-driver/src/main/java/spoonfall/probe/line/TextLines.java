package spoonfall.probe.line;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lines of text with one temperature in each: the only number of the line, or that of one column, which is
 * named by its number from 1, by its heading, or by the name before its value, as in {@code T1: 98.42 C}.
 *
 * <p>Remembers the headings, so one instance serves one device.
 */
public final class TextLines implements LineFormat {
    private final Optional<String> column;
    private final Meaning meaning;
    private final boolean decimalComma;
    private final Map<String, Integer> headed = new HashMap<>();

    /**
     * A format of text lines with temperatures.
     *
     * @param column number from 1 or name of the column; empty when a line holds one number
     * @param unit unit of the numbers; empty takes the unit written behind a number, else °C
     * @param decimalComma whether the decimal sign may be a comma
     */
    public TextLines(Optional<String> column, Optional<TemperatureUnit> unit, boolean decimalComma) {
        this(column, Meaning.temperature(unit), decimalComma);
    }

    /** A format of text lines whose numbers have any meaning. */
    public TextLines(Optional<String> column, Meaning meaning, boolean decimalComma) {
        this.column = column.map(String::strip);
        this.meaning = meaning;
        this.decimalComma = decimalComma;
    }

    @Override
    public Parsed parse(String line) {
        List<String> cells = Columns.of(line, decimalComma);
        Optional<String> cell = column.isEmpty() ? Optional.of(line) : cell(column.get(), line, cells);
        Optional<Numbers.Found> number = cell.flatMap(this::onlyNumber);
        if (number.isEmpty()) {
            return Parsed.NONE;
        }
        return meaning.rule()
                .of(
                        number.get().value(),
                        number.get().unit(),
                        name -> cell(name, line, cells)
                                .flatMap(this::onlyNumber)
                                .map(found -> OptionalDouble.of(found.value()))
                                .orElse(OptionalDouble.empty()));
    }

    @Override
    public String description() {
        String what = column.map(c -> "column " + c).orElse("one number a line");
        return what + ", " + meaning.description() + (decimalComma ? ", with a decimal comma" : "");
    }

    /** The text of a column, by number, heading, or the name before its value. */
    private Optional<String> cell(String name, String line, List<String> cells) {
        if (name.isBlank()) {
            return Optional.empty();
        }
        if (name.chars().allMatch(Character::isDigit)) {
            int index = name.length() > 4 ? 0 : Integer.parseInt(name);
            return index >= 1 && index <= cells.size() ? Optional.of(cells.get(index - 1)) : Optional.empty();
        }
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).equalsIgnoreCase(name)) {
                // A heading, or a name in a cell of its own with the value in the next one.
                if (cells.stream().allMatch(c -> Numbers.in(c, decimalComma).isEmpty())) {
                    headed.put(name, i);
                    return Optional.empty();
                }
                return i + 1 < cells.size() ? Optional.of(cells.get(i + 1)) : Optional.empty();
            }
        }
        Integer heading = headed.get(name);
        return valueAfter(name, line)
                .or(() ->
                        heading != null && heading < cells.size() ? Optional.of(cells.get(heading)) : Optional.empty());
    }

    /** The text behind {@code name:} or {@code name=}, up to the next separator. */
    private Optional<String> valueAfter(String name, String line) {
        for (int at = indexOf(line, name, 0); at >= 0; at = indexOf(line, name, at + 1)) {
            boolean begins = at == 0 || !Character.isLetterOrDigit(line.charAt(at - 1));
            String rest = line.substring(at + name.length()).stripLeading();
            if (begins && (rest.startsWith(":") || rest.startsWith("="))) {
                List<String> cells = Columns.of(rest.substring(1).strip(), decimalComma);
                boolean unitApart =
                        cells.size() > 1 && TemperatureUnit.of(cells.get(1)).isPresent();
                return Optional.of(unitApart ? cells.get(0) + " " + cells.get(1) : cells.get(0));
            }
        }
        return Optional.empty();
    }

    private static int indexOf(String line, String name, int from) {
        for (int i = from; i + name.length() <= line.length(); i++) {
            if (line.regionMatches(true, i, name, 0, name.length())) {
                return i;
            }
        }
        return -1;
    }

    private Optional<Numbers.Found> onlyNumber(String text) {
        List<Numbers.Found> found = Numbers.in(text, decimalComma);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }
}
