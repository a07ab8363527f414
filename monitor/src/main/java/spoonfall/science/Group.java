package spoonfall.science;

import java.util.Comparator;
import java.util.List;

/**
 * Published values of one source.
 *
 * @param name the source, and what it gives
 * @param origin how the project knows them
 * @param unit of every value, such as "°C"
 * @param rows at least one
 */
public record Group(String name, Origin origin, String unit, List<Row> rows) {
    /** Refuses a source without values. */
    public Group {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(name + " must have a row");
        }
    }

    /** The row that differs most, whichever way. */
    public Row worst() {
        return rows.stream()
                .max(Comparator.comparingDouble(row -> Math.abs(row.difference())))
                .orElseThrow();
    }
}
