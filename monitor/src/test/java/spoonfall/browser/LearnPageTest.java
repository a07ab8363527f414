package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.book.Firmness;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.learn.Batch;
import spoonfall.log.DataFolder;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.store.CookLog;
import spoonfall.probe.trace.Trace;
import spoonfall.web.WebServer;

/** What the batches teach, in a real browser: a target is taken, and a stiff batch says why. */
final class LearnPageTest {
    @TempDir
    Path folder = Path.of("");

    private static Locator part(Page page, String name) {
        return page.getByTestId("learn-" + name);
    }

    @Test
    void aProposal_isTakenByOneTap_andAStiffBatchSaysWhy_inEverySize() {
        Trace trace = Cooks.trace(Scenario.PAST, 1);
        DataFolder data = new DataFolder(folder);
        long id;
        try (CookLog log = CookLog.openOrMake(data.cooks())) {
            id = log.take(trace, Cooks.settings(trace));
        }
        List<Batch> batches = List.of(
                new Batch(-2, "seville orange", 4.4, Firmness.SOFT),
                new Batch(-1, "seville orange", 4.9, Firmness.RIGHT),
                new Batch(id, "seville orange", 6.0, Firmness.STIFF));
        Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
                clock -> List.of(new ToldProbe("pan", 0)),
                System::nanoTime);
        Kitchens kitchens = Kitchens.one(kitchen).remembering(new BatchMemory(data, () -> batches, FoodBook::usual));
        try (Browsers browsers = Browsers.open();
                WebServer server = new WebServer(kitchens, "127.0.0.1", 0);
                kitchens) {
            kitchens.start();
            server.start();
            String address = "http://localhost:" + server.port() + "/";
            Page page = Browsers.open(browsers.context(390, 844, ColorScheme.LIGHT), address);
            page.getByTestId("to-learn").click();
            assertThat(part(page, "state")).isFocused();
            assertThat(part(page, "state"))
                    .hasText(Pattern.compile("Seville orange\\. Next: [45]\\.\\d° above boiling water\\."));
            assertThat(part(page, "lines")).containsText("softer than your last");
            assertThat(part(page, "lines")).containsText("It rests on 3 batches of it.");
            Browsers.isAccessibleAndFits(page);
            double big = part(page, "take").boundingBox().height;
            assertThat(big).as("the height of the big act").isGreaterThanOrEqualTo(72);
            part(page, "take").click();
            assertThat(part(page, "aim")).containsText("as proposed");
            assertThat(part(page, "take")).isHidden();

            part(page, "why-" + id).click();
            assertThat(part(page, "headline")).isFocused();
            assertThat(part(page, "headline")).containsText("It came out stiff.");
            assertThat(part(page, "findings")).containsText("past its target");
            assertThat(part(page, "next")).containsText("Overcooked cannot be mended");
            assertThat(part(page, "next")).containsText("sticks and burns");
            assertThat(part(page, "recook")).isHidden();
            Browsers.isAccessibleAndFits(page);

            Page desktop = Browsers.open(browsers.context(1440, 900, ColorScheme.DARK), address + "#learn");
            assertThat(part(desktop, "aim")).containsText("as proposed");
            part(desktop, "which").selectOption("another fruit");
            assertThat(part(desktop, "lines")).containsText("It rests on no batch of it and 3 of other fruits.");
            assertThat(part(desktop, "take")).isVisible();
            Browsers.isAccessibleAndFits(desktop);
            Page tablet = Browsers.open(browsers.context(820, 1180, ColorScheme.LIGHT), address + "#learn");
            assertThat(part(tablet, "batches")).containsText("Seville orange, from the notebook: right at 4.9°");
            tablet.evaluate("document.documentElement.style.fontSize = '200%'");
            Browsers.isAccessibleAndFits(tablet);
        }
    }
}
