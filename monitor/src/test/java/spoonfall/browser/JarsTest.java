package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Reading;

/** The jars in a real browser, from the published time to the seals, with a clock that the test sets forward. */
final class JarsTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final AtomicLong nanos = new AtomicLong(1_000_000_000L);
    private final Kitchens kitchens = Kitchens.one(new Kitchen(
            KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1),
            clock -> List.of(new ToldProbe("pan", 0)),
            nanos::get));

    @BeforeEach
    void serve() {
        SERVED.serve(kitchens);
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId("jars-" + name);
    }

    private static Locator quieter(Page page, String does) {
        return page.locator("[data-does='" + does + "']");
    }

    private void passes(double seconds) {
        nanos.addAndGet((long) (seconds * 1e9));
    }

    private void cannerSays(double temperatureC, int seconds) {
        for (int i = 0; i < seconds; i++) {
            passes(1);
            kitchens.jars().reading(Reading.good("canner", nanos.get(), temperatureC, ""));
        }
    }

    private static void putIn(Page page, int jars) {
        part(page, "headspace").selectOption("1/4in");
        part(page, "look").click();
        part(page, "count").fill(String.valueOf(jars));
        part(page, "put").click();
    }

    /** A tap, once the button has lain under the finger for as long as it is deaf. */
    private static void tap(Page page, String label) {
        assertThat(part(page, "main")).hasText(label);
        page.waitForTimeout(450);
        part(page, "main").click();
    }

    @Test
    void aLoad_goesFromThePublishedTimeToTheSeals_andTwoPagesSeeTheSame() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        Page other = SERVED.page(1180, 820, ColorScheme.DARK);
        other.navigate(other.url() + "#jars");
        page.getByTestId("to-jars").click();
        assertThat(part(page, "state")).isFocused();
        assertThat(part(page, "elevation")).hasValue("1240m");
        part(page, "look").click();
        assertThat(part(page, "wrong")).containsText("Nobody said how much headspace the jars have");
        assertThat(part(page, "wrong")).containsText("food-safety authority");
        assertThat(part(page, "put")).isHidden();
        part(page, "headspace").selectOption("1/4in");
        part(page, "look").click();
        assertThat(part(page, "answer")).containsText("10 minutes");
        part(page, "answer").locator("summary").click();
        assertThat(part(page, "answer")).containsText("from 1,001 to 6,000 ft");
        assertThat(part(page, "answer")).containsText("USDA Complete Guide to Home Canning");
        part(page, "count").fill("2");
        part(page, "put").click();
        assertThat(part(page, "state")).hasText("Waiting for the boil.");
        assertThat(part(other, "load")).hasText("2 half-pint jars of marmalade, 10 minutes in boiling water.");
        tap(other, "It is at a full boil");
        assertThat(part(page, "timer")).hasText("10:00");
        passes(570);
        assertThat(part(page, "timer")).hasText("0:30");
        passes(30);
        assertThat(page.getByTestId("call-title")).hasText("The jars' time is up.");
        assertThat(page.getByTestId("not-now")).hasCount(0);
        page.getByTestId("acknowledge").click();
        assertThat(other.getByTestId("call")).isHidden();
        tap(page, "Heat and lid are off");
        assertThat(part(page, "timer")).hasText("5:00");
        passes(300);
        tap(page, "They are out");
        assertThat(part(page, "act")).hasText(Pattern.compile("Leave them alone until \\d\\d:\\d\\d\\."));
        passes(12 * 3600 + 60);
        assertThat(part(page, "state")).hasText("Check the seals.");
        quieter(page, "1-1-yes").click();
        Browsers.press(quieter(page, "1-2-no"), "Enter");
        assertThat(part(other, "load-1")).containsText("Jar 2 did not seal. Refrigerate what did not seal");
        assertThat(quieter(page, "1-2-no")).isFocused();
        Browsers.isAccessibleAndFits(page);
        quieter(page, "undo").click();
        assertThat(quieter(page, "1-2-no")).hasAttribute("aria-pressed", "false");
        quieter(page, "1-2-yes").click();
        assertThat(part(page, "load-1")).containsText("All 2 jars sealed.");
        quieter(page, "away-1").click();
        assertThat(part(page, "load-1")).hasCount(0);
    }

    @Test
    void aLostBoil_callsOnTheViewOfThePanToo_andTheTimeStartsAgain() {
        Page page = SERVED.page(390, 844, ColorScheme.DARK);
        page.getByTestId("to-jars").click();
        putIn(page, 6);
        assertThat(part(page, "state")).hasText("Waiting for the boil.");
        cannerSays(95.8, 40);
        assertThat(part(page, "state")).hasText("At the boil.");
        assertThat(part(page, "note")).containsText("The canner is at 95.8 °C; water boils at 95.8 °C here.");
        cannerSays(95.8, 200);
        page.navigate(page.url().replace("#jars", "#pan"));
        cannerSays(91, 15);
        assertThat(page.getByTestId("call-title")).hasText("The canner stopped boiling.");
        assertThat(page.getByTestId("call-act")).hasText("Bring it back: the whole 10 minutes start again.");
        page.getByTestId("acknowledge").click();
        assertThat(page.getByTestId("call")).isHidden();
        page.getByTestId("to-jars").click();
        assertThat(part(page, "state")).hasText("The boil stopped.");
        page.waitForTimeout(450);
        part(page, "main").click();
        assertThat(part(page, "error")).containsText("The thermometer in the canner shows 91.0 °C");
        cannerSays(95.8, 40);
        assertThat(part(page, "note")).containsText("The whole time started again.");
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void aLoad_isProcessedByKeyboardAlone() {
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        Browsers.press(page.getByTestId("to-jars"), "Enter");
        assertThat(part(page, "state")).isFocused();
        assertThat(part(page, "elevation")).hasValue("1240m");
        Browsers.press(part(page, "headspace"), "1"); // the first choice that begins with it
        assertThat(part(page, "headspace")).hasValue("1/4in");
        Browsers.press(part(page, "elevation"), "Enter");
        Browsers.press(part(page, "put"), "Enter");
        assertThat(part(page, "state")).hasText("Waiting for the boil.");
        page.waitForTimeout(450);
        Browsers.press(part(page, "main"), "Enter");
        assertThat(part(page, "timer")).hasText("10:00");
        Browsers.press(quieter(page, "boil-lost"), "Enter");
        assertThat(part(page, "state")).hasText("The boil stopped.");
    }

    @ParameterizedTest
    @CsvSource({"360,740,LIGHT,100", "390,844,DARK,200", "820,1180,LIGHT,100", "1180,820,DARK,100", "1440,900,LIGHT,200"
    })
    void everyStepInEverySize_isAccessibleAndFits(int width, int height, ColorScheme scheme, int textPercent) {
        Page page = SERVED.page(width, height, scheme);
        page.getByTestId("to-jars").click();
        page.evaluate("percent => { document.documentElement.style.fontSize = percent + '%'; }", textPercent);
        Browsers.isAccessibleAndFits(page);
        part(page, "canner").selectOption("steam");
        assertThat(part(page, "ph")).isVisible();
        part(page, "recipeTime").fill("10min");
        part(page, "ph").fill("3.2");
        part(page, "tested").selectOption("yes");
        part(page, "headspace").selectOption("1/4in");
        part(page, "look").click();
        assertThat(part(page, "put")).isVisible();
        Browsers.isAccessibleAndFits(page);
        part(page, "put").click();
        tap(page, "It steams steadily");
        assertThat(part(page, "timer")).hasText("10:00");
        double digits = part(page, "timer").boundingBox().height;
        assertThat(digits).as("the height of the digits").isGreaterThanOrEqualTo(90);
        Browsers.isAccessibleAndFits(page);
        double quiet = quieter(page, "boil-lost").boundingBox().height;
        assertThat(quiet).as("the height of a quiet act").isGreaterThanOrEqualTo(44);
        passes(600);
        assertThat(page.getByTestId("call-title")).hasText("The jars' time is up.");
        Browsers.isAccessibleAndFits(page);
        double big = part(page, "main").boundingBox().height;
        assertThat(big).as("the height of the big act").isGreaterThanOrEqualTo(72);
    }
}
