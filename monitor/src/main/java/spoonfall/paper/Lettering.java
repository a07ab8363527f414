package spoonfall.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The letters of labels, Liberation Sans (SIL Open Font License), and how words are set in a box with them. */
final class Lettering {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final double LARGEST_MM = 8;
    private static final double SMALLEST_MM = 1.8;
    private static final double STEP_MM = 0.2;

    /** A line below the first is that much smaller, and lines are that far apart. */
    private static final double SMALLER = 0.72;

    private static final double LEADING = 1.2;
    private static final double THOUSAND = 1000;

    private final PDFont font;

    /** Loads the letters into a document. */
    Lettering(PDDocument document) {
        try (InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
            if (in == null) {
                throw new IllegalStateException("the letters of the labels are missing; build Spoonfall again");
            }
            font = PDType0Font.load(document, in, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A line where it is set, all lengths in millimetres.
     *
     * @param text the line
     * @param sizeMm of its letters
     * @param baseMm from the upper edge of the box to its base line
     */
    record Line(String text, double sizeMm, double baseMm) {}

    PDFont font() {
        return font;
    }

    /** How wide a text is, in millimetres. */
    double widthMm(String text, double sizeMm) {
        try {
            return font.getStringWidth(text) / THOUSAND * sizeMm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the labels' letters cannot write all of \"" + text + "\"; say it in others", e);
        }
    }

    /**
     * Lines in the middle of a box, as large as they fit.
     *
     * @throws IllegalArgumentException if they do not fit however small
     */
    List<Line> set(List<String> lines, double widthMm, double heightMm) {
        for (double sizeMm = LARGEST_MM; sizeMm >= SMALLEST_MM; sizeMm -= STEP_MM) {
            List<Line> set = new ArrayList<>();
            double downMm = 0;
            for (int i = 0; i < lines.size(); i++) {
                double letterMm = i == 0 ? sizeMm : sizeMm * SMALLER;
                for (String part : broken(lines.get(i), letterMm, widthMm)) {
                    downMm += letterMm * LEADING;
                    set.add(new Line(part, letterMm, downMm));
                }
            }
            boolean narrow = set.stream().allMatch(line -> widthMm(line.text(), line.sizeMm()) <= widthMm);
            if (narrow && downMm <= heightMm) {
                double aboveMm = (heightMm - downMm) / 2 - sizeMm * (LEADING - 1);
                return set.stream()
                        .map(line -> new Line(line.text(), line.sizeMm(), line.baseMm() + aboveMm))
                        .toList();
            }
        }
        throw new IllegalArgumentException(
                "so many words do not fit on a label of that size; use fewer, or larger labels");
    }

    private List<String> broken(String text, double sizeMm, double widthMm) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" +", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && widthMm(longer, sizeMm) > widthMm) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
