package spoonfall.probe.line;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Cuts a line into columns: by semicolons or tabs, else by commas, else by white space. */
final class Columns {
    private static final Pattern SPACE = Pattern.compile("\\s+");

    private Columns() {}

    static List<String> of(String line, boolean decimalComma) {
        char separator = separator(line, decimalComma);
        return cut(line, separator == ' ' ? SPACE : Pattern.compile(Pattern.quote(String.valueOf(separator))));
    }

    /** What cuts the line; a space stands for any white space. */
    static char separator(String line, boolean decimalComma) {
        for (char separator : new char[] {';', '\t', ','}) {
            boolean usable = separator != ',' || !decimalComma;
            if (usable && line.indexOf(separator) >= 0) {
                return separator;
            }
        }
        return ' ';
    }

    private static List<String> cut(String line, Pattern separator) {
        List<String> cells = new ArrayList<>();
        for (String cell : separator.split(line, -1)) {
            String bare = cell.strip();
            boolean quoted = bare.length() >= 2 && bare.startsWith("\"") && bare.endsWith("\"");
            cells.add(quoted ? bare.substring(1, bare.length() - 1) : bare);
        }
        return cells;
    }
}
