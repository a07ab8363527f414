package spoonfall.paper;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalInt;
import spoonfall.log.CookHeader;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookPage;

/** What the book knows for the labels of a batch. */
public final class BookLabels {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final int USUAL_SHEET = 21;

    private final BookPage page;

    private BookLabels(BookPage page) {
        this.page = page;
    }

    /** For a cook of the book. */
    public static BookLabels of(BatchBook book, long id) {
        return new BookLabels(book.page(id));
    }

    /** The label by what was said of the batch. */
    public Label label() {
        return label(page.made().fruit());
    }

    /** The label of jars in which something else is than the fruit's name says. */
    public Label label(String contents) {
        CookHeader header = page.cook().header();
        String made = DAY.format(header.startedAt().atZone(ZoneId.systemDefault()));
        return new Label(contents, shortened(batch(contents, header.batch())), made, shortened(header.kitchen()));
    }

    /** A batch that is called by its contents need not say them again. */
    private static String batch(String contents, String batch) {
        boolean again = !contents.isEmpty() && batch.regionMatches(true, 0, contents + ", ", 0, contents.length() + 2);
        return again ? batch.substring(contents.length() + 2) : batch;
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= Label.LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, Label.LONGEST - 1)) + "…";
    }

    /** One for each jar; a usual sheet of them if nobody counted. */
    public int count() {
        OptionalInt jars = page.made().jars();
        return Math.max(1, Math.min(LabelSheet.MOST, jars.orElse(USUAL_SHEET)));
    }
}
