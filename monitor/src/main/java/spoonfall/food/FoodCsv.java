package spoonfall.food;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table of foods: CSV (RFC 4180) with a heading, one food a line; lines that begin with # are remarks. Percents are of the food's
 * mass. What dissolves is what {@code soluble} says, such as {@code 10.5} or {@code 9-12}; else it lies between what is neither water, fibre
 * nor fat, and what the {@code factor} of 21 CFR 150.140 stands for (100 / factor); without a factor half of the fibre may dissolve
 * as pectin (from memory).
 */
public final class FoodCsv {
    private static final List<String> COLUMNS = List.of(
            "food", "also", "kind", "setting", "cup_g", "cup", "piece_g", "piece", "water", "fibre", "fat", "factor",
            "soluble", "source");
    private static final int MOST_LINES = 5_000;
    private static final int LONGEST_LINE = 1_000;

    private final String name;

    private FoodCsv(String name) {
        this.name = name;
    }

    /**
     * Reads a table.
     *
     * @param text all of it
     * @param name what to call it in complaints
     * @throws IllegalArgumentException in one line that names table, line and column, and the way out
     */
    public static List<Food> read(String text, String name) {
        return new FoodCsv(name).read(text);
    }

    private List<Food> read(String text) {
        List<Food> foods = new ArrayList<>();
        List<String> heading = List.of();
        int number = 0;
        for (String line : text.lines().limit(MOST_LINES).toList()) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = cells(line, number);
            if (heading.isEmpty()) {
                heading = checked(cells, number);
            } else {
                foods.add(food(row(heading, cells, number), number));
            }
        }
        if (heading.isEmpty()) {
            throw complaint(number, "there is no heading; the first line must be " + String.join(",", COLUMNS));
        }
        return foods;
    }

    private List<String> checked(List<String> heading, int number) {
        for (String column : heading) {
            if (!COLUMNS.contains(column)) {
                throw complaint(number, "\"" + column + "\" is no column; they are " + String.join(", ", COLUMNS));
            }
        }
        if (!heading.containsAll(List.of("food", "kind", "water", "source"))) {
            throw complaint(number, "the columns food, kind, water and source are needed");
        }
        return heading;
    }

    private Map<String, String> row(List<String> heading, List<String> cells, int number) {
        if (cells.size() != heading.size()) {
            throw complaint(number, "there are " + cells.size() + " cells below " + heading.size() + " headings");
        }
        Map<String, String> row = new LinkedHashMap<>();
        COLUMNS.forEach(column -> row.put(column, ""));
        for (int i = 0; i < cells.size(); i++) {
            row.put(heading.get(i), cells.get(i).strip());
        }
        return row;
    }

    private Food food(Map<String, String> row, int number) {
        try {
            double water =
                    number(row, "water").orElseThrow(() -> new IllegalArgumentException("water is needed, in %"));
            return new Food(
                    row.getOrDefault("food", "").toLowerCase(Locale.ROOT),
                    Stream.of(row.getOrDefault("also", "").split(";"))
                            .map(String::strip)
                            .filter(one -> !one.isEmpty())
                            .toList(),
                    named("kind", row, FoodKind.values(), FoodKind::wireName),
                    named("setting", row, SettingClass.values(), SettingClass::wireName),
                    number(row, "cup_g"),
                    row.getOrDefault("cup", ""),
                    number(row, "piece_g"),
                    row.getOrDefault("piece", ""),
                    water,
                    solubles(row, water),
                    row.getOrDefault("source", ""));
        } catch (IllegalArgumentException e) {
            throw complaint(number, String.valueOf(e.getMessage()));
        }
    }

    private static Solubles solubles(Map<String, String> row, double water) {
        String said = row.getOrDefault("soluble", "");
        if (!said.isEmpty()) {
            String[] ends = said.split("-", 2);
            double low = number("soluble", ends[0].strip());
            return new Solubles(low, ends.length == 1 ? low : number("soluble", ends[1].strip()));
        }
        double solids = 100 - water;
        double fibre = number(row, "fibre").orElse(0);
        double clear = Math.max(0, solids - fibre - number(row, "fat").orElse(0));
        OptionalDouble factor = number(row, "factor");
        double other =
                factor.isPresent() ? Math.min(solids, 100 / factor.getAsDouble()) : Math.min(solids, clear + fibre / 2);
        return new Solubles(Math.min(clear, other), Math.max(clear, other));
    }

    private static OptionalDouble number(Map<String, String> row, String column) {
        String text = row.getOrDefault(column, "");
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column, text));
    }

    private static double number(String column, String text) {
        if (!text.matches("\\d{1,6}(\\.\\d{1,6})?")) {
            throw new IllegalArgumentException(column + " must be a number such as 12.5, not \"" + text + "\"");
        }
        return Double.parseDouble(text);
    }

    private static <T> T named(
            String column, Map<String, String> row, T[] values, java.util.function.Function<T, String> wireName) {
        String text = row.getOrDefault(column, "");
        return Arrays.stream(values)
                .filter(value -> wireName.apply(value).equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(column + " must be "
                        + Arrays.stream(values)
                                .map(wireName)
                                .filter(one -> !one.isEmpty())
                                .collect(Collectors.joining(", "))
                        + ", not \"" + text + "\""));
    }

    private List<String> cells(String line, int number) {
        if (line.length() > LONGEST_LINE) {
            throw complaint(number, "the line is longer than " + LONGEST_LINE + " letters; is this a table of foods?");
        }
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        if (quoted) {
            throw complaint(number, "a quotation mark is not closed");
        }
        cells.add(cell.toString());
        return cells;
    }

    private IllegalArgumentException complaint(int line, String what) {
        return new IllegalArgumentException(name + ", line " + line + ": " + what);
    }
}
