package spoonfall.probe.line;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Lines of text with one temperature in each: the only number of the line, or that of one column, which is
 * named by its number from 1, by its heading, or by the name before its value, as in {@code T1: 98.42 C}.
 *
 * <p>Remembers the heading line, so one instance serves one device.
 */
public final class TextLines implements LineFormat {
    private final Optional<String> column;
    private final Optional<TemperatureUnit> unit;
    private final boolean decimalComma;
    private OptionalInt headed = OptionalInt.empty();

    /**
     * A format of text lines.
     *
     * @param column number from 1 or name of the column; empty when a line holds one number
     * @param unit unit of the numbers; empty takes the unit written behind a number, else °C
     * @param decimalComma whether the decimal sign may be a comma
     */
    public TextLines(Optional<String> column, Optional<TemperatureUnit> unit, boolean decimalComma) {
        this.column = column.map(String::strip);
        this.unit = unit;
        this.decimalComma = decimalComma;
    }

    @Override
    public Parsed parse(String line) {
        if (column.isEmpty()) {
            return onlyNumber(line);
        }
        String name = column.get();
        List<String> cells = Columns.of(line, decimalComma);
        if (name.chars().allMatch(Character::isDigit)) {
            int index = name.length() > 4 ? 0 : Integer.parseInt(name);
            return index >= 1 && index <= cells.size() ? onlyNumber(cells.get(index - 1)) : Parsed.NONE;
        }
        return named(name, line, cells);
    }

    @Override
    public String description() {
        String what = column.map(c -> "column " + c).orElse("one number a line");
        return what + ", in " + unit.map(TemperatureUnit::sign).orElse("the unit it names, else °C")
                + (decimalComma ? ", with a decimal comma" : "");
    }

    private Parsed named(String name, String line, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).equalsIgnoreCase(name)) {
                // A heading, or a name in a cell of its own with the value in the next one.
                boolean heading =
                        cells.stream().allMatch(c -> Numbers.in(c, decimalComma).isEmpty());
                if (heading) {
                    headed = OptionalInt.of(i);
                    return Parsed.NONE;
                }
                return i + 1 < cells.size() ? onlyNumber(cells.get(i + 1)) : Parsed.NONE;
            }
        }
        Optional<String> value = valueAfter(name, line);
        if (value.isPresent()) {
            return onlyNumber(value.get());
        }
        return headed.isPresent() && headed.getAsInt() < cells.size()
                ? onlyNumber(cells.get(headed.getAsInt()))
                : Parsed.NONE;
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

    private Parsed onlyNumber(String text) {
        List<Numbers.Found> found = Numbers.in(text, decimalComma);
        if (found.size() != 1) {
            return Parsed.NONE;
        }
        Numbers.Found number = found.get(0);
        return Parsed.of(number.value(), unit.or(number::unit).orElse(TemperatureUnit.C));
    }
}
