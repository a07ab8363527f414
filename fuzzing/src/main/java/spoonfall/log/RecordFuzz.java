package spoonfall.log;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import spoonfall.fuzz.Must;
import spoonfall.fuzz.Scratch;

/** What the record and the book of calibrations keep as JSON, after something else wrote in their files. */
public final class RecordFuzz {
    private RecordFuzz() {}

    /** What a cook's record says of its beginning is refused, or is the same when it is written and read again. */
    public static void header(byte[] input) {
        CookHeader header;
        try {
            header = CookJson.header(CookJson.parse(new String(input, StandardCharsets.UTF_8)));
        } catch (IllegalArgumentException e) {
            Must.hold(!String.valueOf(e.getMessage()).isBlank(), "a complaint says nothing");
            return;
        }
        String written = CookJson.text(CookJson.header(header));
        try {
            Must.equal(CookJson.header(CookJson.parse(written)), header, "written and read again");
        } catch (IllegalArgumentException e) {
            throw new AssertionError("written but not understood: " + written, e);
        }
    }

    /** A book of calibrations is refused in one line, or keeps what it had when another one is added. */
    public static void calibrations(byte[] input) {
        Path file = Scratch.holding("calibrations.json", input);
        CalibrationBook book = new CalibrationBook(file);
        List<CalibrationBook.Entry> entries;
        try {
            entries = book.entries();
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            Must.hold(message.contains(file.toString()), "a complaint does not name the file: " + message);
            Must.beOneLine(message);
            return;
        }
        for (CalibrationBook.Entry entry : entries) {
            for (double shownC : new double[] {0, 20, 104.4}) {
                Must.hold(Double.isFinite(entry.correction().trueC(shownC)), "a correction that is no number");
            }
        }
        if (!entries.isEmpty()) {
            CalibrationBook.Entry last = entries.get(entries.size() - 1);
            book.add(new CalibrationBook.Entry(
                    last.probe(), last.place(), last.at(), last.conditions(), false, last.correction()));
            List<CalibrationBook.Entry> more = book.entries();
            Must.equal(more.subList(0, entries.size()), entries, "another one was added, and the others changed");
            Must.equal(more.get(entries.size()).correction(), last.correction(), "written and read again");
        }
    }
}
