package spoonfall.log.memory;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.learn.Batch;
import spoonfall.learn.Outcomes;
import spoonfall.units.Quantities;

/**
 * Batches out of a notebook, as CSV with the heading {@code fruit,final_rise,set}, the earliest first. They were never
 * recorded: their numbers are below 0, so that they count as earlier than every recorded one.
 */
public final class BatchFile implements Outcomes {
    /** What its first line is. */
    public static final String HEADING = "fruit,final_rise,set";

    private static final long LARGEST_BYTES = 1024 * 1024;
    private static final int MOST_ROWS = 2000;

    private final Path file;

    /** The batches in a file, which need not be there. */
    public BatchFile(Path file) {
        this.file = file;
    }

    /**
     * The batches in it; none if it is not there.
     *
     * @throws IllegalArgumentException with one line that names the file and the line of it
     */
    @Override
    public List<Batch> batches() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 1 MiB; keep the latest batches in it");
            }
            CSVFormat format = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setIgnoreSurroundingSpaces(true)
                    .setIgnoreEmptyLines(true)
                    .get();
            try (CSVParser parser = CSVParser.parse(Files.readString(file), format)) {
                return batches(parser);
            }
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException(file + " is not text in UTF-8; save it as such", e);
        } catch (IOException | UncheckedIOException e) {
            throw new IllegalArgumentException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private List<Batch> batches(CSVParser parser) {
        List<String> names = parser.getHeaderNames().stream()
                .map(name -> name.replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT))
                .toList();
        if (!names.equals(List.of(HEADING.split(",")))) {
            throw new IllegalArgumentException(
                    file + ", line 1: the heading must be " + HEADING + ", not " + String.join(",", names));
        }
        List<CSVRecord> rows = new ArrayList<>();
        for (CSVRecord row : parser) {
            if (rows.size() == MOST_ROWS) {
                throw new IllegalArgumentException(file + " has more than " + MOST_ROWS + " batches; keep the latest");
            }
            rows.add(row);
        }
        List<Batch> batches = new ArrayList<>();
        for (CSVRecord row : rows) {
            batches.add(batch(row, batches.size() - (long) rows.size()));
        }
        return List.copyOf(batches);
    }

    private Batch batch(CSVRecord row, long id) {
        try {
            if (row.size() != HEADING.split(",").length) {
                throw new IllegalArgumentException("a batch is " + HEADING + ", such as orange,4.6C,soft");
            }
            return new Batch(id, row.get(0), Quantities.differenceC(row.get(1)), Firmness.named(row.get(2)), After.DAY);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(file + ", batch " + row.getRecordNumber() + ": " + e.getMessage(), e);
        }
    }

    /** The batches of several places as one. */
    public static Outcomes all(Outcomes... places) {
        return () ->
                Stream.of(places).flatMap(place -> place.batches().stream()).toList();
    }
}
