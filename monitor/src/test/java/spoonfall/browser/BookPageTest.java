package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.log.Diary;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.paper.CookReport;
import spoonfall.paper.Label;
import spoonfall.paper.LabelPrinter;
import spoonfall.paper.LabelSheet;
import spoonfall.paper.ReportChoice;
import spoonfall.photo.Photo;
import spoonfall.photo.PhotoMaker;
import spoonfall.probe.trace.Trace;
import spoonfall.web.WebServer;

/** The batch book in a real browser. */
final class BookPageTest {
    @TempDir
    private static Path folder;

    private static Browsers browsers;
    private static Kitchens kitchens;
    private static WebServer server;

    @BeforeAll
    static void serve() {
        Path file = folder.resolve("cooks.db");
        try (CookLog log = CookLog.openOrMake(file)) {
            for (Scenario scenario : List.of(Scenario.CLEAN, Scenario.STALL)) {
                Trace trace = Cooks.trace(scenario, 4);
                log.take(trace, Cooks.settings(trace));
            }
            log.note(1, "<img src=x onerror=alert(1)> skimmed twice");
        }
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        Kitchen kitchen = new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime);
        kitchens = new Kitchens(List.of(kitchen), Optional.empty(), Diary.none(), Optional.of(new BatchBook(file)));
        server = new WebServer(kitchens, "127.0.0.1", 0);
        kitchens.start();
        server.start();
        browsers = Browsers.open();
    }

    @AfterAll
    static void stop() {
        browsers.close();
        server.close();
        kitchens.close();
    }

    private static Page page(int width, int height, ColorScheme scheme, String hash) {
        return Browsers.open(browsers.context(width, height, scheme), "http://localhost:" + server.port() + "/" + hash);
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId("book-" + name);
    }

    private static FilePayload photo() throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), "png", png);
        return new FilePayload("x.png", "image/png", png.toByteArray());
    }

    @Test
    void aCook_isFound_saysHowItCameOut_andStandsBesideAnother() throws IOException {
        Page page = page(390, 844, ColorScheme.DARK, "");
        page.getByTestId("to-book").click();
        assertThat(part(page, "state")).isFocused();
        assertThat(part(page, "note")).hasText("2 cooks so far.");
        Browsers.isAccessibleAndFits(page);
        part(page, "text").fill("skimmed");
        assertThat(part(page, "note")).hasText("1 cook found.");
        part(page, "list").locator("a").click();
        assertThat(part(page, "events")).containsText("<img src=x onerror=alert(1)> skimmed twice");
        assertThat(part(page, "climb").locator("canvas")).isVisible();
        part(page, "day-firm").click();
        assertThat(part(page, "day-firm")).hasAttribute("aria-pressed", "true");
        part(page, "day-bitter").click();
        assertThat(part(page, "day-bitter")).hasAttribute("aria-pressed", "true");
        assertThat(part(page, "note")).containsText("firm after a day");
        part(page, "made-fruit").fill("Quince");
        part(page, "made-jars").fill("6");
        part(page, "made-keep").click();
        assertThat(part(page, "note")).containsText("6 jars");
        part(page, "photo").setInputFiles(photo());
        assertThat(part(page, "photos").locator("img")).hasCount(1);
        part(page, "photo")
                .setInputFiles(new FilePayload("x.png", "image/png", "<script>".getBytes(StandardCharsets.US_ASCII)));
        assertThat(part(page, "photo-error")).containsText("neither a JPEG nor a PNG");
        Browsers.isAccessibleAndFits(page);
        page.locator(".book-paper summary").click();
        Download labels = page.waitForDownload(() -> part(page, "labels").click());
        assertThat(new String(Files.readAllBytes(labels.path()), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        Page paper = Browsers.open(
                browsers.context(900, 1200, ColorScheme.LIGHT),
                Files.copy(labels.path(), folder.resolve("labels.pdf")).toUri() + "#toolbar=0&navpanes=0");
        paper.waitForCondition(() -> inkOnPaper(paper.screenshot()) > 500);
        part(page, "other").selectOption("2");
        assertThat(page).hasURL(Pattern.compile("#book/1/2$"));
        assertThat(part(page, "beside")).containsText("Dashed:");
        part(page, "mark").selectOption("boilS");
        assertThat(part(page, "climb")).hasAttribute("aria-label", Pattern.compile("when they boiled hard"));
        page.getByTestId("unit").click();
        assertThat(part(page, "climb")).hasAttribute("aria-label", Pattern.compile("up to [789]\\.\\d°"));
    }

    /** Dark dots between the two edges of a white sheet, in the rows of a picture where there is one. */
    private static int inkOnPaper(byte[] png) {
        try {
            BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
            int ink = 0;
            for (int y = 0; y < picture.getHeight(); y++) {
                int row = y;
                int[] brightness = IntStream.range(0, picture.getWidth())
                        .map(x -> picture.getRGB(x, row) & 0xff)
                        .toArray();
                int[] white = IntStream.range(0, brightness.length)
                        .filter(x -> brightness[x] == 0xff)
                        .toArray();
                if (white.length > brightness.length / 4) {
                    ink += (int) IntStream.range(white[0], white[white.length - 1])
                            .filter(x -> brightness[x] < 0x60)
                            .count();
                }
            }
            return ink;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Page opened(BrowserContext offline, String name, String content) throws IOException {
        offline.setOffline(true);
        return Browsers.open(
                offline,
                Files.writeString(folder.resolve(name), content).toUri().toString());
    }

    @Test
    void aReport_opensWithoutTheProgramAndTheNetwork_andSaysOnlyWhatWasChosen() throws Exception {
        BatchBook book = new BatchBook(folder.resolve("cooks.db"));
        Photo photo = new PhotoMaker().remade(photo().buffer);
        book.add(2, photo.digest(), photo.width(), photo.height(), photo.jpeg());
        try (CookLog log = CookLog.open(folder.resolve("cooks.db"))) {
            log.note(2, "<script>document.title = 'taken'</script> for aunt");
        }
        String plain = CookReport.of(book, 2, new ReportChoice(false, false, false, false));
        assertThat(plain)
                .doesNotContain("aunt")
                .doesNotContain("<img")
                .doesNotContain("<script")
                .doesNotContain("http:");
        String all = CookReport.of(book, 2, new ReportChoice(true, true, true, true));
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            Page report = opened(browsers.context(820, 1180, scheme), "report.html", all);
            assertThat(report).hasTitle(Pattern.compile("Seville orange"));
            assertThat(report.locator("svg path.climb")).isVisible();
            assertThat(report.locator("table")).containsText("document.title");
            assertThat(report.evaluate("document.images[0].complete && document.images[0].naturalWidth"))
                    .isEqualTo(400);
            Browsers.isAccessibleAndFits(report);
        }
        Label label = new Label("Quince", "batch 2", "25 November 2026", "Hollin Bank");
        String svg = LabelPrinter.svg(label, LabelSheet.of("a4", "63.5x38.1", "2.5x0", Optional.empty(), 21));
        Page sheet = opened(browsers.context(900, 1200, ColorScheme.LIGHT), "labels.svg", svg);
        assertThat(sheet.evaluate("document.querySelectorAll('text').length")).isEqualTo(84);
        assertThat(sheet.evaluate("[...document.querySelectorAll('text')].every(t => t.getBBox().width <= 57.6)"))
                .isEqualTo(true);
    }

    /** Whether no more than two in a hundred of two pictures' dots differ in light by a third or more. */
    private static boolean alike(byte[] onePng, byte[] otherPng) {
        try {
            BufferedImage one = ImageIO.read(new ByteArrayInputStream(onePng));
            BufferedImage other = ImageIO.read(new ByteArrayInputStream(otherPng));
            int width = Math.min(one.getWidth(), other.getWidth());
            int height = Math.min(one.getHeight(), other.getHeight());
            int beyond = Math.abs(one.getWidth() - other.getWidth()) + Math.abs(one.getHeight() - other.getHeight());
            long differ = IntStream.range(0, width * height)
                    .filter(i -> Math.abs((one.getRGB(i % width, i / width) & 0xFF)
                                    - (other.getRGB(i % width, i / width) & 0xFF))
                            > 85)
                    .count();
            return beyond < 4 && differ < 0.02 * width * height;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theServicesPicture_isThereBeforeAnyScript_andIsTheSameAsTheirs() {
        for (String hash : List.of("#book/1", "#book/1/2")) {
            List<Route> held = new ArrayList<>();
            BrowserContext context = browsers.context(1000, 800, ColorScheme.LIGHT);
            context.route("**/book-first.js", held::add);
            Page page = Browsers.open(context, "http://localhost:" + server.port() + "/" + hash);
            Locator picture = part(page, "climb").locator("img");
            page.waitForCondition(() -> !held.isEmpty() && picture.isVisible());
            assertThat(picture.evaluate("image => image.naturalWidth > 0")).isEqualTo(true);
            byte[] first = part(page, "climb").screenshot();
            assertThat(inkOnPaper(first)).isGreaterThan(500);
            held.forEach(Route::resume);
            assertThat(part(page, "climb").locator("canvas")).isVisible();
            assertThat(picture).hasCount(0);
            // Not at once: the words above it come after it, and move it while it is looked at.
            page.waitForCondition(() -> alike(first, part(page, "climb").screenshot()));
        }
    }

    @Test
    void everySize_isAccessibleAndFits() {
        for (Page page : List.of(
                page(1440, 900, ColorScheme.LIGHT, "#book/1/2"), page(820, 1180, ColorScheme.LIGHT, "#book/2"))) {
            assertThat(part(page, "climb").locator("canvas")).isVisible();
            Browsers.isAccessibleAndFits(page);
            page.evaluate("document.documentElement.style.fontSize = '200%'");
            Browsers.nothingSticksOut(page);
        }
        Page gone = page(390, 844, ColorScheme.LIGHT, "#book/99");
        assertThat(part(gone, "state")).hasText("It is not in the book.");
    }
}
