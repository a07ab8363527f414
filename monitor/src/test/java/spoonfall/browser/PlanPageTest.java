package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoonfall.cook.Cooks;
import spoonfall.food.Ingredient;
import spoonfall.food.IngredientLine;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.plan.TypedSetup;
import spoonfall.probe.trace.Trace;
import spoonfall.web.WebServer;

/** The plan in a real browser, from the recipe to the jars. */
final class PlanPageTest {
    private final Trace trace = Cooks.trace(Scenario.CLEAN, 1);
    private final ToldProbe probe = new ToldProbe("pan", 0);
    private final AtomicLong aheadNanos = new AtomicLong();

    private static Pantry pantry() {
        List<Ingredient> ingredients = Stream.of("600 g seville orange", "660 mL water", "740 g sugar")
                .map(line -> IngredientLine.read(line, FoodBook.usual()))
                .toList();
        var none = java.util.Optional.<String>empty();
        TypedSetup setup = new TypedSetup(java.util.Optional.of("9L"), none, java.util.Optional.of("4min"), none, none);
        return Pantry.of(new PlanFile(none, ingredients, setup, java.util.Optional.empty()));
    }

    @Test
    void fromTheRecipe_overTheCook_toTheJars() {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1);
        try (Kitchen kitchen = new Kitchen(plan, clock -> List.of(probe), () -> System.nanoTime() + aheadNanos.get());
                WebServer server = new WebServer(Kitchens.one(kitchen).stocked(pantry()), "127.0.0.1", 0);
                Browsers browsers = Browsers.open()) {
            kitchen.start();
            server.start();
            String address = "http://localhost:" + server.port() + "/";
            Page page = Browsers.open(browsers.context(1180, 820, ColorScheme.LIGHT), address);
            page.getByTestId("to-plan").click();
            assertThat(page.getByTestId("plan-state")).isFocused();
            assertThat(page.getByTestId("plan-state"))
                    .hasText(Pattern.compile(
                            "\\d\\.\\d to \\d\\.\\d half-pint jars, after about \\d\\d minutes of boiling\\."));
            assertThat(page.getByTestId("plan-picture").locator("svg path"))
                    .not()
                    .hasCount(0);
            Browsers.isAccessibleAndFits(page);

            writesARecipe(page);
            page.getByTestId("plan-cook").click();
            assertThat(page.getByTestId("plan-attached")).containsText("The next cook has a plan: 4 ingredients");
            page.reload();
            assertThat(page.getByTestId("plan-food")).hasCount(4); // what was written is still there

            cooks(kitchen);
            assertThat(page.getByTestId("plan-attached")).containsText("The pan has a plan");
            page.getByTestId("plan-jars").fill("4");
            page.getByTestId("plan-say").click();
            assertThat(page.getByTestId("plan-yield")).containsText("You filled 4;");
            onAPhoneAtNight(browsers, address);

            page.getByTestId("plan").getByText("Back to the pan").click();
            jarsGoIn(page, 4);
            theyComeOut(page);
            page.getByTestId("new-cook").click();
            page.getByTestId("to-plan").click();
            page.getByTestId("plan-cook").click();
            assertThat(page.getByTestId("plan-attached")).containsText("The next cook has a plan");
            cooks(kitchen);
            assertThat(page.getByTestId("plan-say")).isVisible();
            assertThat(page.getByTestId("plan-jars"))
                    .hasValue(""); // not what the cook before it filled, and is on the shelf
            page.getByTestId("plan").getByText("Back to the pan").click();
            jarsGoIn(page, 3);
            page.getByTestId("to-plan").click();
            page.reload();
            assertThat(page.getByTestId("plan-jars")).hasValue("3");
        }
    }

    private static void jarsGoIn(Page page, int jars) {
        page.getByTestId("to-jars").click();
        page.getByTestId("jars-headspace").selectOption("1/4in");
        page.getByTestId("jars-look").click();
        page.getByTestId("jars-count").fill(String.valueOf(jars));
        page.getByTestId("jars-put").click();
        assertThat(page.getByTestId("jars-state")).hasText("Waiting for the boil.");
        page.getByTestId("jars").getByText("Back to the pan").click();
    }

    private void theyComeOut(Page page) {
        page.getByTestId("to-jars").click();
        tap(page, "It is at a full boil");
        assertThat(page.getByTestId("jars-timer")).hasText("10:00");
        aheadNanos.addAndGet(600_000_000_000L);
        tap(page, "Heat and lid are off");
        assertThat(page.getByTestId("jars-timer")).hasText("5:00");
        aheadNanos.addAndGet(300_000_000_000L);
        tap(page, "They are out");
        assertThat(page.getByTestId("jars-act")).hasText(Pattern.compile("Leave them alone until .*"));
        page.waitForTimeout(2000); // the wall clock of the jars is in whole seconds
        page.getByTestId("jars").getByText("Back to the pan").click();
    }

    /** A tap, once the button has lain under the finger for as long as it is deaf. */
    private static void tap(Page page, String label) {
        assertThat(page.getByTestId("jars-main")).hasText(label);
        page.waitForTimeout(450);
        page.getByTestId("jars-main").click();
    }

    private void cooks(Kitchen kitchen) {
        for (int i = 0; i < trace.size(); i++) {
            probe.say(trace.temperatureC(i).orElseThrow(), 1);
        }
        kitchen.state().join(); // all of it is judged
    }

    private static void writesARecipe(Page page) {
        page.getByTestId("plan-add").click();
        Locator food = page.getByTestId("plan-food").last();
        page.getByTestId("plan-amount").last().fill("3/4");
        page.getByTestId("plan-unit").last().selectOption("cup");
        food.fill("lemn juice");
        assertThat(page.getByTestId("plan-error")).containsText("did you mean lemon juice");
        assertThat(food).hasAttribute("aria-invalid", "true");
        assertThat(page.getByTestId("plan-state")).hasText("What goes into the pan?");
        food.fill("lemon juice");
        assertThat(page.getByTestId("plan-error")).isEmpty();
        assertThat(page.getByTestId("plan-grams").last()).hasText("183 g"); // 3/4 of 244 g
        assertThat(page.getByTestId("plan-advice")).containsText("Its pH is not known");
        page.getByTestId("plan-power").fill("2kW");
        assertThat(page.getByTestId("plan-error")).containsText("not both");
        page.getByTestId("plan-power").fill("");
        assertThat(page.getByTestId("plan-error")).isEmpty();
    }

    private static void onAPhoneAtNight(Browsers browsers, String address) {
        Page page = Browsers.open(browsers.context(390, 844, ColorScheme.DARK), address + "#plan");
        assertThat(page.getByTestId("plan-food")).hasCount(4); // what the pan has, on a device that wrote nothing
        assertThat(page.getByTestId("plan-yield")).containsText("You filled 4;");
        assertThat(page.getByTestId("plan-figures")).containsText("Water to drive off");
        page.getByTestId("unit").click();
        assertThat(page.getByTestId("plan-figures")).containsText("212.5 °F");
        page.getByText("Where the numbers come from").click();
        assertThat(page.getByTestId("plan-sources")).containsText("SR28 NDB 09152");
        Browsers.isAccessibleAndFits(page);
        Object small = page.evaluate(
                "[...document.querySelectorAll('.plan button, .plan input, .plan select')].filter((it) => it.offsetParent && it.getBoundingClientRect().height < 44).length");
        assertThat(small).isEqualTo(0);
    }
}
