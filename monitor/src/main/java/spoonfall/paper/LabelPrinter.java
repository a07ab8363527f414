package spoonfall.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sheets of labels as PDF and as SVG, in their true size: print them without scaling. */
public final class LabelPrinter {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double INSIDE_MM = 3;

    private LabelPrinter() {}

    /** All pages as a PDF with its letters in it. */
    public static byte[] pdf(Label label, LabelSheet sheet) {
        try (PDDocument document = new PDDocument()) {
            Lettering letters = new Lettering(document);
            List<Lettering.Line> lines = lines(letters, label, sheet);
            document.getDocumentInformation()
                    .setTitle("Labels: " + label.lines().get(0));
            for (int page = 0; page < sheet.pages(); page++) {
                PDPage paper = new PDPage(new PDRectangle(
                        points(sheet.paper().widthMm()), points(sheet.paper().heightMm())));
                document.addPage(paper);
                try (PDPageContentStream pen = new PDPageContentStream(document, paper)) {
                    int first = page * sheet.perPage();
                    for (int i = first; i < Math.min(sheet.count(), first + sheet.perPage()); i++) {
                        print(pen, letters, lines, sheet, i);
                    }
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void print(
            PDPageContentStream pen, Lettering letters, List<Lettering.Line> lines, LabelSheet sheet, int i)
            throws IOException {
        for (Lettering.Line line : lines) {
            double widthMm = letters.widthMm(line.text(), line.sizeMm());
            double xMm = sheet.leftMm(i) + (sheet.widthMm() - widthMm) / 2;
            double yMm = sheet.paper().heightMm() - sheet.topMm(i) - INSIDE_MM - line.baseMm();
            pen.beginText();
            pen.setFont(letters.font(), points(line.sizeMm()));
            pen.newLineAtOffset(points(xMm), points(yMm));
            pen.showText(line.text());
            pen.endText();
        }
    }

    /**
     * One page as an SVG. Each line says how long it is: where its letters are missing others take their place, which may be wider.
     *
     * @throws IllegalArgumentException if they do not fit on one page
     */
    public static String svg(Label label, LabelSheet sheet) {
        if (sheet.pages() > 1) {
            throw new IllegalArgumentException("an SVG has one page, and " + sheet.count() + " labels need "
                    + sheet.pages() + "; print " + sheet.perPage() + ", or make a PDF");
        }
        try (PDDocument document = new PDDocument()) {
            Lettering letters = new Lettering(document);
            List<Lettering.Line> lines = lines(letters, label, sheet);
            Markup svg = new Markup();
            svg.raw(format(
                    "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.2fmm\" height=\"%2$.2fmm\""
                            + " viewBox=\"0 0 %1$.2f %2$.2f\">\n",
                    sheet.paper().widthMm(), sheet.paper().heightMm()));
            svg.raw("<title>").text("Labels: " + label.lines().get(0)).raw("</title>\n");
            svg.raw("<g font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\" text-anchor=\"middle\">\n");
            for (int i = 0; i < sheet.count(); i++) {
                for (Lettering.Line line : lines) {
                    svg.raw(format(
                                    "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" textLength=\"%.2f\""
                                            + " lengthAdjust=\"spacingAndGlyphs\">",
                                    sheet.leftMm(i) + sheet.widthMm() / 2,
                                    sheet.topMm(i) + INSIDE_MM + line.baseMm(),
                                    line.sizeMm(),
                                    letters.widthMm(line.text(), line.sizeMm())))
                            .text(line.text())
                            .raw("</text>\n");
                }
            }
            return svg.raw("</g>\n</svg>\n").toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Lettering.Line> lines(Lettering letters, Label label, LabelSheet sheet) {
        return letters.set(label.lines(), sheet.widthMm() - 2 * INSIDE_MM, sheet.heightMm() - 2 * INSIDE_MM);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
