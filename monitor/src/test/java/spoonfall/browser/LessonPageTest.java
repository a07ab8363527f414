package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.AlarmName;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.log.Diary;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.probe.trace.Trace;
import spoonfall.web.WebServer;

/** A cook as a lesson, in a real browser. */
final class LessonPageTest {
    @TempDir
    private Path folder;

    private static Locator part(Page page, String name) {
        return page.getByTestId("lesson-" + name);
    }

    @Test
    void aLesson_asksThenTells_andALivePanGoesFirst() {
        Path file = folder.resolve("cooks.db");
        Trace trace = Cooks.trace(Scenario.CLEAN, 4);
        try (CookLog log = CookLog.openOrMake(file)) {
            log.take(trace, Cooks.settings(trace));
            Trace stall = Cooks.trace(Scenario.STALL, 4);
            log.take(stall, Cooks.settings(stall));
        }
        ToldProbe probe = new ToldProbe("pan", 0);
        Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
                clock -> List.of(probe),
                System::nanoTime);
        Kitchens kitchens =
                new Kitchens(List.of(kitchen), Optional.empty(), Diary.none(), Optional.of(new BatchBook(file)));
        try (Browsers browsers = Browsers.open();
                WebServer server = new WebServer(kitchens, "127.0.0.1", 0);
                kitchens) {
            kitchens.start();
            server.start();
            String address = "http://localhost:" + server.port() + "/";
            Page page = Browsers.open(browsers.context(390, 844, ColorScheme.DARK), address + "#book/1");
            page.getByTestId("book-lesson").click();
            assertThat(part(page, "state")).isFocused();
            assertThat(part(page, "flag")).containsText("not the pan on the hob");
            asksThenTells(page);
            Page desktop = Browsers.open(browsers.context(1440, 900, ColorScheme.LIGHT), address + "#lesson/1/2");
            standBeside(desktop);
            part(page, "speed").selectOption("1");
            part(page, "play").click();
            assertThat(part(page, "play")).hasText("Pause");
            double gelT =
                    Cooks.raisedT(Cooks.events(trace), AlarmName.GEL_POINT).orElseThrow();
            for (int i = 0; trace.elapsedS(i) < gelT + 30; i++) {
                probe.say(trace.temperatureC(i).orElseThrow(), 1);
            }
            assertThat(page.getByTestId("call")).isVisible();
            assertThat(part(page, "play")).hasText("Play");
            assertThat(part(page, "flag")).isVisible();
        }
    }

    private static void asksThenTells(Page page) {
        part(page, "next").click();
        while (!"What would you do now?".equals(part(page, "question").textContent())) {
            part(page, "next").click();
        }
        assertThat(part(page, "choices").locator("button")).hasCount(4);
        assertThat(part(page, "say-0")).isEmpty();
        assertThat(part(page, "said")).isEmpty();
        assertThat(part(page, "climb").locator("canvas")).isVisible();
        Browsers.isAccessibleAndFits(page);
        page.getByText("Nothing yet.").click();
        assertThat(part(page, "yours")).hasText("You would: Nothing yet.");
        assertThat(part(page, "said")).containsText("Spoonfall said:");
        assertThat(part(page, "say-0")).not().isEmpty();
        String before = part(page, "time").textContent();
        part(page, "speed").selectOption("60");
        part(page, "play").click();
        assertThat(part(page, "time")).not().hasText(before);
        part(page, "play").click();
        assertThat(part(page, "play")).hasText("Play");
        part(page, "ask").uncheck();
        part(page, "moments").locator("xpath=..").locator("summary").click();
        part(page, "moments").locator("button").last().click();
        assertThat(part(page, "question")).isVisible();
        assertThat(part(page, "next")).isDisabled();
    }

    private static void standBeside(Page page) {
        assertThat(part(page, "state")).hasText("Two cooks beside each other, as a lesson.");
        assertThat(part(page, "beside")).containsText("Dashed:");
        assertThat(part(page, "panel-1")).isVisible();
        part(page, "mark").selectOption("boilS");
        assertThat(part(page, "climb")).hasAttribute("aria-label", Pattern.compile("when they boiled hard"));
        part(page, "next").click();
        part(page, "slider").fill("600");
        assertThat(part(page, "time")).hasText("10 min after");
        assertThat(part(page, "heat-1")).containsText("above boiling water");
        Browsers.isAccessibleAndFits(page);
        assertThat(page.getByTestId("sentence").isVisible()).isFalse();
    }
}
