package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;

/** The afternoon in a real browser. */
final class AfternoonTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    /** A pan as it stands after so many seconds of a clean cook. */
    private void serveCook(double untilS) {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1);
        SERVED.serve(
                new Kitchen(plan, clock -> List.of(new FastForward(trace, untilS, false, clock)), System::nanoTime));
    }

    /** A kitchen whose thermometer says nothing, in which time passes so many times as fast as life. */
    private void serveTaps(double speed, BatchNotes notes) {
        CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", settings, speed).with(notes);
        SERVED.serve(new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime));
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId("afternoon-" + name);
    }

    private static Locator step(Page page, String id) {
        return part(page, "steps").locator("[data-id='" + id + "']");
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "390,844,DARK", "1440,900,LIGHT", "1180,820,DARK"})
    void theAfternoonOfAClimbingPan_isPlannedFromItsForecast(int width, int height, ColorScheme scheme) {
        serveCook(1200);
        Page page = SERVED.page(width, height, scheme, "");
        assertThat(page.getByTestId("coming-up")).containsText("Test the set");
        page.getByTestId("to-afternoon").click();
        assertThat(part(page, "state"))
                .hasText(Pattern.compile(
                        "Next: test the set, (in about \\d+ minutes|in about a minute|within \\d+ minutes)\\."));
        assertThat(step(page, "soften")).hasAttribute("data-state", "done");
        assertThat(step(page, "boil")).hasAttribute("aria-current", "step");
        assertThat(step(page, "canner")).containsText("Heat the canner");
        Browsers.isAccessibleAndFits(page);
        part(page, "steps").scrollIntoViewIfNeeded();
        page.getByText("Change the steps").click();
        Browsers.isAccessibleAndFits(page);
        page.getByTestId("afternoon").getByText("Back to the pan").click();
        assertThat(page.getByTestId("temperature")).isVisible();
    }

    @Test
    void aWholeAfternoonByTapsAlone_isSeenByTwoPages() {
        serveTaps(6000, UsualAfternoon.notes().without("plates").without("jars").without("canner"));
        Page one = SERVED.page(390, 844, ColorScheme.LIGHT, "#afternoon");
        Page two = SERVED.page(1180, 820, ColorScheme.DARK, "#afternoon");
        assertThat(part(one, "state")).hasText("First: soften the peel.");
        part(one, "act").click();
        List<String> labels = List.of(
                "The peel is soft", "The sugar has melted", "It is time to test", "It has set", "It is off the heat");
        for (int i = 0; i < labels.size(); i++) {
            Page who = i % 2 == 0 ? one : two;
            tap(who, labels.get(i));
        }
        for (String label :
                List.of("The jars are full", "The rims are clean", "The lids are on", "They are processed")) {
            tap(two, label);
        }
        assertThat(part(one, "state"))
                .hasText("The afternoon is over.", new LocatorAssertions.HasTextOptions().setTimeout(20_000));
        assertThat(part(two, "due")).hasText("Check the seal of every jar.");
        assertThat(step(one, "spirit")).hasAttribute("data-state", "skipped");
        assertThat(step(two, "cool")).hasAttribute("data-state", "done");
        Browsers.isAccessibleAndFits(one);
    }

    /** Taps the act once it has that label. */
    private static void tap(Page page, String label) {
        assertThat(part(page, "act")).hasText(label);
        part(page, "act").click();
        assertThat(part(page, "act")).not().hasText(label);
    }

    @Test
    void aTapIsTakenBackFromAnotherPage_andAStepIsSkippedChangedAndAdded() {
        serveTaps(1, UsualAfternoon.notes());
        Page one = SERVED.page(1440, 900, ColorScheme.LIGHT, "#afternoon");
        Page two = SERVED.page(390, 844, ColorScheme.LIGHT, "#afternoon");
        part(one, "act").click();
        one.getByText("Change the steps").click();
        part(one, "leave-out").click();
        assertThat(step(two, "soften")).containsText("left out");
        assertThat(part(two, "undo")).hasText("Undo: Soften the peel");
        part(two, "undo").click();
        assertThat(step(one, "soften")).hasAttribute("data-state", "now");
        part(one, "choose").selectOption("soften");
        part(one, "name").fill("Soften the quinces");
        part(one, "minutes").fill("40");
        part(one, "keep").click();
        assertThat(step(two, "soften")).containsText("Soften the quinces");
        part(one, "minutes").fill("4000");
        part(one, "keep").click();
        assertThat(step(two, "soften")).containsText("Soften the quinces");
        part(one, "add-name").fill("Skim");
        part(one, "add-place").selectOption("after off");
        part(one, "add-it").click();
        assertThat(step(two, "skim")).containsText("Skim");
        part(one, "choose").selectOption("process");
        part(one, "remove").click();
        assertThat(step(two, "process")).hasCount(0);
        assertThat(part(two, "caution")).containsText("fridge");
        part(two, "undo").click();
        assertThat(step(one, "process")).hasCount(1);
    }

    @Test
    void theKeyboardAlone_tapsAndUndoes() {
        serveTaps(1, UsualAfternoon.notes());
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT, "");
        Browsers.press(page.getByTestId("to-afternoon"), "Enter");
        assertThat(part(page, "state")).isFocused();
        assertThat(part(page, "act")).hasText("I have begun");
        page.keyboard().press(" ");
        assertThat(step(page, "soften")).hasAttribute("data-state", "now");
        page.keyboard().press("Tab");
        assertThat(part(page, "act")).isFocused();
        page.keyboard().press("Tab");
        assertThat(part(page, "undo")).isFocused();
        page.keyboard().press("Enter");
        assertThat(part(page, "state")).hasText("First: soften the peel.");
    }
}
