package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;

/** Two pans, a canner and several pages in a real browser. */
final class PansTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final Trace clean = Cooks.trace(Scenario.CLEAN, 1);
    private final Trace stall = Cooks.trace(Scenario.STALL, 1);
    private final HeldTrace big = new HeldTrace("big", clean);
    private final HeldTrace small = new HeldTrace("small", stall);
    private final ToldProbe inCanner = new ToldProbe("canner", 0);
    private final Kitchens kitchens = new Kitchens(
            List.of(
                    kitchen("big pan", "Seville orange and ginger", big, clean),
                    kitchen("small pan", "Lemon and thyme", small, stall)),
            Optional.of(new Canner(clock -> inCanner, System::nanoTime, Thermometry.none())));

    @BeforeEach
    void serve() {
        SERVED.serve(kitchens);
        big.playUntil(900);
        small.playUntil(900);
        inCanner.say(95.9, 1);
    }

    private static Kitchen kitchen(String pan, String batch, HeldTrace probe, Trace trace) {
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", batch, Cooks.settings(trace), 1).inPan(pan);
        return new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static Locator pan(Page page, String name) {
        return part(page, "pans").locator(".pan").filter(new Locator.FilterOptions().setHasText(name));
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "390,844,DARK", "1180,820,LIGHT", "1440,900,DARK"})
    void theRow_showsEveryPanAndTheCanner_inEverySize(int width, int height, ColorScheme scheme) {
        Page page = SERVED.page(width, height, scheme, "");
        assertThat(pan(page, "Big pan")).hasAttribute("aria-current", "true");
        assertThat(pan(page, "Small pan")).hasText(Pattern.compile("Small pan \\S.*"));
        assertThat(pan(page, "Small pan")).not().hasAttribute("aria-current", "true");
        assertThat(pan(page, "Canner")).containsText("95.9 °C");
        assertThat(pan(page, "Small pan").boundingBox().height).isGreaterThanOrEqualTo(44);
        Browsers.isAccessibleAndFits(page);
        small.playUntil(1270);
        assertThat(part(page, "call-title")).containsText("Small pan: It is cooling");
        assertThat(pan(page, "Small pan")).containsText("Needs you.");
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void aTap_goesOverToTheOtherPanAndStaysThereWhenThePageIsLoadedAgain() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        assertThat(part(page, "batch")).hasText("Seville orange and ginger");
        pan(page, "Small pan").click();
        assertThat(part(page, "batch")).hasText("Lemon and thyme");
        assertThat(pan(page, "Small pan")).hasAttribute("aria-current", "true");
        assertThat(part(page, "temperature")).isVisible();
        part(page, "to-thermometer").click();
        assertThat(part(page, "thermometer")).isVisible();
        page.reload();
        assertThat(part(page, "thermometer")).isVisible();
        assertThat(part(page, "batch")).hasText("Lemon and thyme");
        pan(page, "Big pan").click();
        assertThat(part(page, "thermometer")).isHidden();
        assertThat(part(page, "batch")).hasText("Seville orange and ginger");
    }

    @Test
    void twoPagesOnTwoPans_areBothCalled_andBothSeeTheAnswerAtOnce() {
        Page one = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        Page other = SERVED.page(1180, 820, ColorScheme.DARK, "#pan=small%20pan");
        assertThat(part(other, "batch")).hasText("Lemon and thyme");
        small.playUntil(1270);
        for (Page page : List.of(one, other)) {
            assertThat(part(page, "call-title")).containsText("Small pan: It is cooling");
            assertThat(page.locator("body")).hasAttribute("data-look", "call");
        }
        Page late = SERVED.page(1440, 900, ColorScheme.LIGHT, "");
        assertThat(part(late, "call-title")).containsText("Small pan: It is cooling");

        part(one, "acknowledge").click();
        for (Page page : List.of(one, other, late)) {
            assertThat(part(page, "call")).isHidden();
            assertThat(pan(page, "Small pan")).not().containsText("Needs you.");
        }
        assertThat(part(other, "others")).containsText(Pattern.compile("It is cooling.* You know\\."));
        assertThat(part(one, "others")).not().containsText("It is cooling");
    }

    @Test
    void aMoreUrgentCall_takesTheTopWhicheverPanItIsOf() {
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT, "");
        pan(page, "Small pan").click();
        assertThat(part(page, "batch")).hasText("Lemon and thyme");
        small.playUntil(1270);
        assertThat(part(page, "call-title")).containsText("Small pan: It is cooling");
        big.playUntil(1500);
        assertThat(part(page, "call-title")).hasText("Big pan: Start the set tests now.");
        page.keyboard().press("Space");
        assertThat(part(page, "call-title")).containsText("Small pan: It is cooling");
        part(page, "not-now").click();
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "others")).containsText("Put aside until");
    }

    @Test
    void aNoteHalfWritten_staysWithItsPan() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        part(page, "notes").locator("summary").click();
        Locator text = part(page, "note-text");
        text.fill("Too thin at ");
        pan(page, "Small pan").click();
        assertThat(text).hasValue("");
        text.fill("Lid off");
        part(page, "note-keep").click();
        assertThat(part(page, "note-list")).containsText("Lid off");
        assertThat(text).hasValue("");
        pan(page, "Big pan").click();
        assertThat(text).hasValue("Too thin at ");
        assertThat(part(page, "note-list")).not().containsText("Lid off");
        text.fill("Too thin at 104");
        part(page, "note-keep").click();
        assertThat(part(page, "note-list")).containsText("Too thin at 104");
        pan(page, "Small pan").click();
        assertThat(part(page, "note-list")).not().containsText("Too thin");
    }

    @Test
    void aNoteHalfWritten_isNotForTheNextCookOfItsPan() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        big.playUntil(1820);
        assertThat(part(page, "sentence-state")).hasText("Off the heat.");
        part(page, "notes").locator("summary").click();
        part(page, "note-text").fill("Too thin at ");
        part(page, "new-cook").click();
        assertThat(part(page, "temperature")).isHidden();
        big.playUntil(1825);
        assertThat(part(page, "temperature")).isVisible();
        assertThat(part(page, "note-text")).isVisible();
        assertThat(part(page, "note-text")).hasValue("");
    }

    @Test
    void whatIsWrittenOnWhileANoteIsOnItsWay_isNotLost() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        List<Route> held = new ArrayList<>();
        page.route("**/notes*", held::add);
        part(page, "notes").locator("summary").click();
        Locator text = part(page, "note-text");
        text.fill("Too thin");
        part(page, "note-keep").click();
        assertThat(part(page, "note-keep")).isDisabled();
        text.fill("Too thin at 104");
        page.waitForCondition(() -> !held.isEmpty());
        held.forEach(Route::resume);
        assertThat(part(page, "note-list")).containsText("Too thin");
        assertThat(part(page, "note-keep")).isEnabled();
        assertThat(text).hasValue("Too thin at 104");
    }

    @Test
    void textAtTwiceTheSize_isAllThereOnAPhone() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "");
        assertThat(pan(page, "Canner")).containsText("95.9 °C");
        page.evaluate("document.documentElement.style.fontSize = '200%'");
        for (String name : List.of("Big pan", "Small pan", "Canner")) {
            assertThat(pan(page, name)).isInViewport();
            Object cut =
                    pan(page, name).evaluate("e => e.scrollWidth > e.clientWidth || e.scrollHeight > e.clientHeight");
            assertThat(cut).as(name + " is cut").isEqualTo(false);
        }
    }

    @Test
    void anAddressOfAPanThatIsNotThere_showsTheFirstAndSaysSo() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT, "#pan=middle");
        assertThat(part(page, "batch")).hasText("Seville orange and ginger");
        assertThat(part(page, "pans")).containsText("No pan is called “middle” here. This is another one.");
        Browsers.isAccessibleAndFits(page);
        pan(page, "Small pan").click();
        assertThat(part(page, "batch")).hasText("Lemon and thyme");
        assertThat(part(page, "pans")).not().containsText("middle");
    }
}
