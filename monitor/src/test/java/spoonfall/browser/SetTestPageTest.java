package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;

/** Set tests on the page, in a real browser, by a cook whose time the test decides. */
final class SetTestPageTest {
    private static final double IN_THE_WINDOW_S = 1560;

    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final Trace trace = Cooks.trace(Scenario.PAST, 1);
    private SteppedProbe probe;
    private Kitchen kitchen;

    @BeforeEach
    void serve() {
        probe = new SteppedProbe(trace, System::nanoTime);
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "Seville orange and ginger, batch 14", Cooks.settings(trace), 1);
        kitchen = new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
        SERVED.serve(kitchen);
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static void isLarge(Locator button) {
        assertThat(button.boundingBox().height).isGreaterThanOrEqualTo(72);
    }

    private static void shoot(Page page, String name) {
        String into = System.getProperty("spoonfall.shots", "");
        if (!into.isEmpty()) {
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(Path.of(into, name + ".png"))
                    .setFullPage(true));
        }
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "390,844,DARK", "1180,820,LIGHT", "1180,820,DARK", "1440,900,LIGHT", "1440,900,DARK"})
    void aWholeTest_isAccessibleAndFitsInEverySize(int width, int height, ColorScheme scheme) {
        String size = width + "-" + scheme;
        probe.play(IN_THE_WINDOW_S);
        Page page = SERVED.page(width, height, scheme);
        part(page, "acknowledge").click();
        assertThat(part(page, "test-begin")).isVisible();
        isLarge(part(page, "test-begin"));
        Browsers.isAccessibleAndFits(page);
        shoot(page, "offer-" + size);
        part(page, "test-begin").click();
        assertThat(part(page, "test-timer")).hasText("1:30");
        probe.glide(99.5, 96, 42);
        assertThat(part(page, "test-timer")).hasText("0:48");
        assertThat(part(page, "sentence-state")).hasText("Testing the set.");
        isLarge(part(page, "seen-runs"));
        isLarge(part(page, "seen-not-yet"));
        Browsers.isAccessibleAndFits(page);
        shoot(page, "open-" + size);
        probe.glide(96, 94, 50);
        assertThat(part(page, "call-title")).hasText("The plate has had its 90 seconds.");
        shoot(page, "ready-" + size);
        part(page, "seen-drops-join").click();
        assertThat(part(page, "test-title")).containsText("Two drops join, at 99.");
        assertThat(part(page, "call")).isHidden();
        isLarge(part(page, "test-undo"));
        Browsers.isAccessibleAndFits(page);
        shoot(page, "seen-" + size);
        probe.glide(94, 99.5, 60);
        probe.play(IN_THE_WINDOW_S + 8);
        assertThat(part(page, "test-undo")).isHidden();
        assertThat(part(page, "sentence-act")).containsText("The next test is at");
        Browsers.isAccessibleAndFits(page);
        shoot(page, "between-" + size);
        probe.play(IN_THE_WINDOW_S + 150);
        assertThat(part(page, "call-title")).hasText(Pattern.compile("Start the set tests now.|It has reached .*"));
        part(page, "test-begin").click();
        assertThat(part(page, "test-choices")).isVisible();
        part(page, "seen-wrinkles").click();
        assertThat(part(page, "test-title")).containsText("It wrinkles, at");
        assertThat(part(page, "sentence-state")).hasText("Set. The boil is over.");
        assertThat(part(page, "call")).isHidden();
        Browsers.isAccessibleAndFits(page);
        shoot(page, "set-" + size);
    }

    @Test
    void whoeverWantsToTestEarly_mayDoSo_andIsToldThatItIsEarly() {
        probe.play(900);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "test-begin")).isHidden();
        part(page, "test-sooner").click();
        assertThat(part(page, "test-note"))
                .hasText(Pattern.compile("It is early, and may well run\\. A test tells most at 99\\.\\d °C\\."));
        assertThat(part(page, "test-sooner")).isHidden();
        part(page, "seen-runs").click();
        assertThat(part(page, "test-title")).containsText("It runs, at 97.");
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void twoPages_seeTheSameTestAndEitherAnswers() {
        probe.play(IN_THE_WINDOW_S);
        Page one = SERVED.page(390, 844, ColorScheme.LIGHT);
        Page other = SERVED.page(1180, 820, ColorScheme.DARK);
        part(one, "test-begin").click();
        assertThat(part(other, "test-timer")).hasText("1:30");
        part(other, "seen-thickens").click();
        assertThat(part(one, "test-title")).containsText("It thickens");
        part(one, "test-undo").click();
        assertThat(part(other, "test-timer")).hasText("1:30");
        part(other, "test-none").click();
        probe.play(IN_THE_WINDOW_S + 10);
        assertThat(part(one, "test-begin")).isVisible();
    }

    @Test
    void theKeyboardAlone_testsAndAnswers() {
        probe.play(IN_THE_WINDOW_S);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "acknowledge")).isFocused();
        page.keyboard().press("Enter");
        assertThat(part(page, "call")).isHidden();
        Browsers.press(part(page, "test-begin"), "Enter");
        assertThat(part(page, "test-title")).isFocused();
        page.keyboard().press("Tab");
        assertThat(part(page, "seen-runs")).isFocused();
        page.keyboard().press("Space");
        assertThat(part(page, "test-title")).hasText(Pattern.compile("It runs, at .*"));
        page.keyboard().press("Tab");
        assertThat(part(page, "test-undo")).isFocused();
    }

    @Test
    void aPlateOfTwoMinutes_isChosenBeforehand() {
        probe.play(IN_THE_WINDOW_S);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        page.getByLabel("120 s").check();
        part(page, "test-begin").click();
        assertThat(part(page, "test-timer")).hasText("2:00");
    }
}
