package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.hand.HandProbe;
import spoonfall.probe.trace.Trace;

/** Two pans whose thermometers are read by hand and one with a probe, on one page in a real browser. */
final class HandAmongPansTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final Trace clean = Cooks.trace(Scenario.CLEAN, 1);
    private final HeldTrace probe = new HeldTrace("probe", clean);
    private final Kitchens kitchens = new Kitchens(
            List.of(
                    readByHand("copper pan"),
                    readByHand("small pan"),
                    new Kitchen(
                            KitchenPlan.live("Hollin Bank", "Lemon and thyme", Cooks.settings(clean), 1)
                                    .inPan("big pan"),
                            clock -> List.of(probe),
                            System::nanoTime)),
            Optional.empty());

    @BeforeEach
    void serve() {
        SERVED.serve(kitchens);
        probe.playUntil(900);
    }

    private static Kitchen readByHand(String pan) {
        KitchenPlan plan = KitchenPlan.live(
                        "Hollin Bank",
                        "Seville orange and ginger",
                        new CookSettings(WaterBoil.atElevation(1240), 4.44),
                        1)
                .inPan(pan);
        return new Kitchen(plan, clock -> List.of(new HandProbe("pan", clock)), System::nanoTime);
    }

    private Page page() {
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "hand")).isVisible();
        return page;
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static Locator digits(Page page) {
        return part(page, "temperature").locator(".digits");
    }

    private static void tap(Page page, String... keys) {
        for (String key : keys) {
            page.locator("[data-key='" + key + "']").click();
        }
    }

    private static void goTo(Page page, String pan) {
        Locator button = part(page, "pans").locator(".pan").filter(new Locator.FilterOptions().setHasText(pan));
        button.click();
        assertThat(button).hasAttribute("aria-current", "true");
    }

    @Test
    void thePadLeavesAProbesDigitsAlone() {
        Page page = page();
        assertThat(part(page, "temperature")).isHidden();
        goTo(page, "Big pan");
        assertThat(part(page, "hand")).isHidden();
        assertThat(part(page, "temperature")).isVisible();
        assertThat(digits(page)).hasText(Pattern.compile("\\d+\\.\\d"));
        goTo(page, "Small pan");
        tap(page, "9");
        assertThat(part(page, "temperature")).hasClass(Pattern.compile("drafting"));
        goTo(page, "Big pan");
        assertThat(part(page, "hand")).isHidden();
        assertThat(digits(page)).hasText(Pattern.compile("\\d+\\.\\d"));
        assertThat(part(page, "temperature")).not().hasClass(Pattern.compile("drafting"));
    }

    @Test
    void whatIsHalfTyped_staysWithItsPan() {
        Page page = page();
        tap(page, "1", "0");
        assertThat(digits(page)).hasText("10");
        goTo(page, "Small pan");
        assertThat(part(page, "temperature")).isHidden();
        tap(page, "9", "8", "enter");
        assertThat(part(page, "temperature")).hasText("98.0°C");
        goTo(page, "Copper pan");
        assertThat(digits(page)).hasText("10");
        tap(page, "0", "enter");
        assertThat(part(page, "temperature")).hasText("100.0°C");
        goTo(page, "Small pan");
        assertThat(part(page, "temperature")).hasText("98.0°C");
    }

    @Test
    void aQuestion_isAskedOfItsPanAlone() {
        Page page = page();
        tap(page, "1", "0", "0", "4", "enter");
        assertThat(part(page, "hand-question")).containsText("Did you mean 100.4 °C?");
        goTo(page, "Small pan");
        assertThat(part(page, "hand-question")).isHidden();
        assertThat(part(page, "hand-keys")).isVisible();
        tap(page, "9", "7", "enter");
        assertThat(part(page, "temperature")).hasText("97.0°C");
        goTo(page, "Copper pan");
        part(page, "hand-question").locator("button").first().click();
        assertThat(part(page, "temperature")).hasText("100.4°C");
        goTo(page, "Small pan");
        assertThat(part(page, "temperature")).hasText("97.0°C");
    }
}
