package spoonfall.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

final class PaperTest {
    private static final Label LABEL =
            new Label("Seville orange & <ginger>", "batch 14, černá řada", "25 November 2026", "Hollin Bank");

    /** 21 labels of 63.5 by 38.1 mm with 2.5 mm between columns lie on A4 with 7.25 and 15.15 mm around (common practice, no source). */
    private static final LabelSheet USUAL = LabelSheet.of("a4", "63.5x38.1", "2.5x0", Optional.empty(), 21);

    @Test
    void aSheet_liesInTheMiddleOfThePaper() {
        assertThat(USUAL.perPage()).isEqualTo(21);
        assertThat(USUAL.pages()).isOne();
        assertThat(USUAL.leftMm(0)).isCloseTo(7.25, within(1e-9));
        assertThat(USUAL.topMm(0)).isCloseTo(15.15, within(1e-9));
        assertThat(USUAL.leftMm(20)).isCloseTo(7.25 + 2 * 66, within(1e-9));
        assertThat(USUAL.topMm(20)).isCloseTo(15.15 + 6 * 38.1, within(1e-9));
        LabelSheet letter = LabelSheet.of("letter", "66.7x25.4", "3.2x0", Optional.of("3x10"), 31);
        assertThat(letter.pages()).isEqualTo(2);
        assertThat(letter.topMm(30)).isCloseTo(12.7, within(1e-9));
    }

    @Test
    void aPdf_isReadBack_withEveryLabelInItsTrueSizeAndPlace() throws IOException {
        try (PDDocument document = Loader.loadPDF(
                LabelPrinter.pdf(LABEL, LabelSheet.of("a4", "63.5x38.1", "2.5x0", Optional.empty(), 22)))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(595.28f, within(0.01f));
            String text = new PDFTextStripper().getText(document);
            assertThat(text.split("Seville", -1)).hasSize(23);
            assertThat(text)
                    .contains("černá řada")
                    .contains("Made 25 November 2026")
                    .contains("Hollin Bank");
            assertThat(text).doesNotContainIgnoringCase("best before").doesNotContainIgnoringCase("allerg");
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 50.8f); // two pixels a millimetre
            for (int i = 0; i < USUAL.perPage(); i++) {
                assertThat(darkIn(page, USUAL.leftMm(i) + 3, USUAL.topMm(i) + 3, 57.5, 32.1))
                        .as("label " + i)
                        .isTrue();
                assertThat(darkIn(page, USUAL.leftMm(i), USUAL.topMm(i), 63.5, 2.5))
                        .as("its edge")
                        .isFalse();
            }
        }
    }

    private static boolean darkIn(BufferedImage page, double leftMm, double topMm, double widthMm, double heightMm) {
        for (int y = (int) (2 * topMm); y < 2 * (topMm + heightMm); y++) {
            for (int x = (int) (2 * leftMm); x < 2 * (leftMm + widthMm); x++) {
                if ((page.getRGB(x, y) & 0xFF) < 160) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void anSvg_isWellFormed_andTakesNamesForText() throws Exception {
        String svg = LabelPrinter.svg(LABEL, USUAL);
        assertThat(svg).contains("Seville").contains("&amp;").doesNotContain("<ginger>");
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertThatThrownBy(
                        () -> LabelPrinter.svg(LABEL, LabelSheet.of("a4", "63.5x38.1", "2.5x0", Optional.empty(), 22)))
                .hasMessageContaining("print 21, or make a PDF");
    }

    @Test
    void whatDoesNotFit_isSaidWithTheWayOut() {
        assertThatThrownBy(() -> LabelSheet.of("a5", "63x38", "0x0", Optional.empty(), 1))
                .hasMessageContaining("a4 or letter");
        assertThatThrownBy(() -> LabelSheet.of("a4", "big", "0x0", Optional.empty(), 1))
                .hasMessageContaining("63.5x38.1");
        assertThatThrownBy(() -> LabelSheet.of("a4", "300x38", "0x0", Optional.empty(), 1))
                .hasMessageContaining("do not fit");
        assertThatThrownBy(() -> LabelSheet.of("a4", "63x38", "0x0", Optional.empty(), 0))
                .hasMessageContaining("1 to 500");
        assertThatThrownBy(() -> LabelSheet.of("a4", "63x38", "0x0", Optional.of("9x9"), 1))
                .hasMessageContaining("9 by 9");
        assertThatThrownBy(() -> LabelSheet.of("a4", "63x38", "0x0", Optional.of("0x9"), 1))
                .hasMessageContaining("do not fit");
        assertThatThrownBy(() -> new Label("", "", "", "")).hasMessageContaining("--contents");
        assertThatThrownBy(() -> LabelPrinter.pdf(new Label("橙", "", "", ""), USUAL))
                .hasMessageContaining("say it in others");
        Label long1 = new Label(
                "word ".repeat(15).strip(), "word ".repeat(15).strip() + "s", "25 November 2026", "x".repeat(80));
        assertThatThrownBy(() -> LabelPrinter.pdf(long1, LabelSheet.of("a4", "16x16", "0x0", Optional.empty(), 1)))
                .hasMessageContaining("use fewer");
    }
}
