package spoonfall.paper;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sheet of labels, all lengths in millimetres. The labels lie in the middle of the sheet.
 *
 * @param paper what they are printed on
 * @param widthMm of a label
 * @param heightMm of a label
 * @param gapAcrossMm between two that lie side by side
 * @param gapDownMm between two that lie below one another
 * @param across how many lie side by side
 * @param down how many lie below one another
 * @param count how many are wanted
 */
public record LabelSheet(
        Paper paper,
        double widthMm,
        double heightMm,
        double gapAcrossMm,
        double gapDownMm,
        int across,
        int down,
        int count) {
    /** As many labels are printed at once. */
    public static final int MOST = 500;

    private static final double LEAST_MM = 15;
    private static final double SLACK_MM = 1e-6;
    private static final Pattern SIZE =
            Pattern.compile("\\s*(\\d{1,3}(?:\\.\\d{1,2})?)\\s*[x×]\\s*(\\d{1,3}(?:\\.\\d{1,2})?)\\s*(?:mm)?\\s*");

    private static final Pattern GRID = Pattern.compile("\\s*(\\d{1,2})\\s*[x×]\\s*(\\d{1,2})\\s*");

    /** Sheets of paper. */
    public enum Paper {
        /** ISO 216. */
        A4(210, 297),
        /** US letter, ANSI/ASME Y14.1: 8 1/2 by 11 inches. */
        LETTER(215.9, 279.4);

        private final double widthMm;
        private final double heightMm;

        Paper(double widthMm, double heightMm) {
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }

        /** How wide it is. */
        double widthMm() {
            return widthMm;
        }

        /** How high it is. */
        double heightMm() {
            return heightMm;
        }
    }

    /** Validates that at least one label fits on the paper. */
    public LabelSheet {
        if (widthMm < LEAST_MM || heightMm < LEAST_MM) {
            throw new IllegalArgumentException("a label is at least 15 mm wide and high, such as 63.5x38.1");
        }
        if (gapAcrossMm < 0 || gapDownMm < 0) {
            throw new IllegalArgumentException("a gap between labels is 0 mm or more, such as 2.5x0");
        }
        double allAcrossMm = across * (widthMm + gapAcrossMm) - gapAcrossMm;
        double allDownMm = down * (heightMm + gapDownMm) - gapDownMm;
        boolean some = across > 0 && down > 0;
        if (!some || allAcrossMm > paper.widthMm() + SLACK_MM || allDownMm > paper.heightMm() + SLACK_MM) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%d by %d labels of %.1f by %.1f mm do not fit on the paper, which has %.1f by %.1f",
                    Math.max(1, across),
                    Math.max(1, down),
                    widthMm,
                    heightMm,
                    paper.widthMm(),
                    paper.heightMm()));
        }
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("print 1 to " + MOST + " labels at once, not " + count);
        }
    }

    /**
     * A sheet as it was typed.
     *
     * @param paper {@code a4} or {@code letter}
     * @param size of a label, such as {@code 63.5x38.1}
     * @param gap between labels, across and down, such as {@code 2.5x0}
     * @param grid how many lie side by side and below one another, such as {@code 3x10}; as many as fit if it is empty
     */
    public static LabelSheet of(String paper, String size, String gap, Optional<String> grid, int count) {
        double[] label = lengths("a label's size", size, "63.5x38.1");
        double[] gaps = lengths("a gap", gap, "2.5x0");
        Paper sheet = switch (paper.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default -> throw new IllegalArgumentException("the paper is a4 or letter");
        };
        int[] many = grid.map(LabelSheet::grid).orElseGet(() ->
                new int[] {fit(sheet.widthMm(), label[0], gaps[0]), fit(sheet.heightMm(), label[1], gaps[1])});
        return new LabelSheet(sheet, label[0], label[1], gaps[0], gaps[1], many[0], many[1], count);
    }

    private static int[] grid(String text) {
        Matcher matcher = GRID.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("a grid is how many labels lie across and down, such as 3x10");
        }
        return new int[] {Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))};
    }

    private static double[] lengths(String what, String text, String example) {
        Matcher matcher = SIZE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(what + " is its width and height in mm, such as " + example);
        }
        return new double[] {Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))};
    }

    private static int fit(double sheetMm, double labelMm, double gapMm) {
        return Math.max(1, (int) ((sheetMm + gapMm + SLACK_MM) / (labelMm + gapMm)));
    }

    /** How many are on a page. */
    public int perPage() {
        return across * down;
    }

    /** How many pages there are. */
    public int pages() {
        return (count + perPage() - 1) / perPage();
    }

    /** From the left edge of the paper to that of label {@code i}. */
    double leftMm(int i) {
        double all = across * (widthMm + gapAcrossMm) - gapAcrossMm;
        return (paper.widthMm() - all) / 2 + i % across * (widthMm + gapAcrossMm);
    }

    /** From the upper edge of the paper to that of label {@code i}. */
    double topMm(int i) {
        int row = i % perPage() / across;
        double all = down * (heightMm + gapDownMm) - gapDownMm;
        return (paper.heightMm() - all) / 2 + row * (heightMm + gapDownMm);
    }
}
