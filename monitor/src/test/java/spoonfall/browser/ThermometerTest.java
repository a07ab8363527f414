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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.CalibrationBook;

/** The guided check in a real browser, with thermometers that live through a minute at once. */
final class ThermometerTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    @TempDir
    Path folder = Path.of("");

    private final ToldProbe pan = new ToldProbe("pan", 0.03);
    private final ToldProbe clip = new ToldProbe("clip", 0.03);

    @BeforeEach
    void serve() {
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        Thermometry thermometry =
                Thermometry.of(List.of(), new CalibrationBook(folder.resolve("calibrations.json")), Optional.empty());
        SERVED.serve(new Kitchen(plan, clock -> List.of(pan, clip), System::nanoTime, thermometry));
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static Locator quieter(Page page, String does) {
        return page.locator("[data-does='" + does + "']");
    }

    @Test
    void aNewCook_isLedFromThePanToTodaysWaterBoilAndBack() {
        pan.say(80, 5);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "trust")).containsText("Never checked in boiling water: it may be off by ±2.5°.");
        part(page, "to-thermometer").click();
        assertThat(part(page, "check-state")).isFocused();
        assertThat(part(page, "climb")).isHidden();
        part(page, "check-act").click();
        assertThat(part(page, "check-state")).hasText("Nothing has come from the thermometer yet.");
        pan.say(93, 10);
        assertThat(part(page, "check-state")).hasText("Steady so far; a minute of it is needed.");
        pan.say(95.4, 130);
        assertThat(part(page, "check-state")).hasText("It has stood still for a minute, at 95.4 °C.");
        assertThat(part(page, "check-note")).containsText("It should show 95.8 °C: +0.5°, true to ±0.4°.");
        assertThat(part(page, "check-picture").locator("svg path")).hasCount(1);
        assertThat(part(page, "check-act")).hasText("Use it as today’s water boil");
        part(page, "unit").click();
        assertThat(part(page, "check-state")).hasText("It has stood still for a minute, at 203.7 °F.");
        part(page, "unit").click();
        part(page, "check-act").click();
        assertThat(part(page, "base-now")).containsText("which was measured at");
        part(page, "to-pan").click();
        assertThat(part(page, "to-thermometer")).isFocused();
        assertThat(part(page, "basis"))
                .hasText(Pattern.compile(
                        "Sets 4.4° above boiling water, which was measured at \\d\\d:\\d\\d: 95.4 °C; true to ±0.1°."));
    }

    @Test
    void aThermometer_isCorrectedAndThatIsTakenBack_byKeyboardAlone() {
        pan.say(80, 5);
        Page page = SERVED.page(1180, 820, ColorScheme.DARK);
        Browsers.press(part(page, "to-thermometer"), "Enter");
        assertThat(part(page, "check-state")).isFocused();
        Browsers.press(part(page, "check-act"), "Enter");
        assertThat(quieter(page, "stop")).isVisible();
        pan.say(95.4, 70);
        Browsers.press(quieter(page, "correct"), "Enter");
        assertThat(part(page, "check-trust")).hasText("Corrected by +0.5°, checked in boiling water today.");
        Browsers.press(quieter(page, "undo"), "Enter");
        assertThat(part(page, "check-trust")).containsText("Never checked in boiling water");
    }

    @Test
    void whatIsTyped_isTakenOrRefusedInWords() {
        pan.say(80, 5);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        part(page, "to-thermometer").click();
        part(page, "base-how").selectOption("sea-level");
        part(page, "base-pressure").fill("1016");
        part(page, "base-elevation").fill("1240m");
        part(page, "base-keep").click();
        assertThat(part(page, "base-answer")).containsText("needs a unit");
        part(page, "base-pressure").fill("1016hPa");
        part(page, "base-keep").click();
        assertThat(part(page, "base-answer")).hasText("Kept. The cook goes on by that.");
        assertThat(part(page, "base-now")).containsText("a report of 1,016 hPa at sea level, at 1,240 m");
    }

    @Test
    void aSecondThermometerThatDisagrees_isSeenAndCalls() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        for (int i = 0; i < 120; i++) {
            pan.say(80, 1);
            clip.say(84, 1);
        }
        assertThat(part(page, "other-probes")).hasText("clip: 84.0 °C");
        assertThat(part(page, "call-title")).hasText("Two thermometers in one pan differ by 4.0°.");
        assertThat(part(page, "call-why")).containsText("clip");
        part(page, "to-thermometer").click();
        // a call takes the top of every view
        assertThat(part(page, "acknowledge")).isVisible();
        Browsers.isAccessibleAndFits(page);
    }

    @ParameterizedTest
    @CsvSource({"360,740,LIGHT,100", "390,844,DARK,200", "820,1180,LIGHT,100", "1180,820,DARK,100", "1440,900,LIGHT,200"
    })
    void everyStepInEverySize_isAccessibleAndFits(int width, int height, ColorScheme scheme, int textPercent) {
        pan.say(80, 5);
        Page page = SERVED.page(width, height, scheme);
        part(page, "to-thermometer").click();
        page.evaluate("percent => { document.documentElement.style.fontSize = percent + '%'; }", textPercent);
        Browsers.isAccessibleAndFits(page);
        part(page, "check-act").click();
        assertThat(part(page, "check-state")).hasText("Nothing has come from the thermometer yet.");
        pan.say(95.4, 20);
        assertThat(part(page, "check-picture")).isVisible();
        Browsers.isAccessibleAndFits(page);
        pan.say(95.4, 60);
        assertThat(part(page, "check-act")).hasText("Use it as today’s water boil");
        Browsers.isAccessibleAndFits(page);
        double high = part(page, "check-act").boundingBox().height;
        assertThat(high).as("the height of the big act").isGreaterThanOrEqualTo(72);
    }
}
