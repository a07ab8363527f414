package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;

/** The page in a real browser, fed by cooks that stop where they are interesting. */
final class PageTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    /** Serves a cook as it stands after {@code untilS} seconds. */
    private void serve(Scenario scenario, double untilS) {
        serve(scenario, untilS, false);
    }

    private void serve(Scenario scenario, double untilS, boolean thenLost) {
        Trace trace = Cooks.trace(scenario, 1);
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "Seville orange and ginger, batch 14", Cooks.settings(trace), 1);
        SERVED.serve(
                new Kitchen(plan, clock -> List.of(new FastForward(trace, untilS, thenLost, clock)), System::nanoTime));
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    @ParameterizedTest
    @CsvSource({
        "60,360,740,LIGHT",
        "60,1180,820,DARK",
        "900,390,844,DARK",
        "900,1180,820,LIGHT",
        "900,1440,900,DARK",
        "1500,390,844,LIGHT",
        "1500,1180,820,DARK",
        "1780,390,844,LIGHT",
        "1780,1440,900,DARK"
    })
    void everyStateInEverySize_isAccessibleAndFits(double untilS, int width, int height, ColorScheme scheme) {
        serve(Scenario.CLEAN, untilS);
        Page page = SERVED.page(width, height, scheme);
        assertThat(part(page, "temperature")).isVisible();
        Browsers.axeFindsNothing(page);
        Browsers.nothingSticksOut(page);
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "1180,820,DARK"})
    void aLostProbe_isUnmistakable(int width, int height, ColorScheme scheme) {
        serve(Scenario.CLEAN, 900, true);
        Page page = SERVED.page(width, height, scheme);
        assertThat(part(page, "sentence-state")).containsText("No word from the probe since");
        assertThat(part(page, "sentence-act")).containsText("Last seen 97.");
        assertThat(part(page, "note")).hasText("/dev/ttyUSB0 was unplugged. Plug it in again; I keep looking.");
        assertThat(part(page, "temperature")).isHidden();
        assertThat(part(page, "probe")).hasText("probe on ttyUSB0 · not there");
        assertThat(page.locator("body")).hasAttribute("data-look", "lost");
        Browsers.axeFindsNothing(page);
        Browsers.nothingSticksOut(page);
    }

    @Test
    void textAtTwiceTheSize_isAllThere() {
        serve(Scenario.CLEAN, 900);
        Page page = SERVED.page(640, 900, ColorScheme.LIGHT);
        assertThat(part(page, "sentence-act")).hasText("Set tests in 5 to 20 minutes.");
        page.evaluate("document.documentElement.style.fontSize = '225%'");
        Browsers.nothingSticksOut(page);
        assertThat(part(page, "sentence-act")).isVisible();
        assertThat(part(page, "coming-up")).isVisible();
    }

    @Test
    void theClimb_saysInWordsWhatItDraws() {
        serve(Scenario.CLEAN, 900);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "climb"))
                .hasAttribute(
                        "aria-label",
                        Pattern.compile(
                                "The climb: [\\d.]+° above boiling water\\. The syrup is about \\d+ % sugar\\. It sets 4\\.4°.*forecast.*"));
        assertThat(part(page, "climb").locator("canvas")).isVisible();
    }

    @Test
    void oneTap_turnsEverythingToFahrenheitAndIsRemembered() {
        serve(Scenario.CLEAN, 900);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "temperature")).containsText("°C");
        part(page, "unit").click();
        assertThat(part(page, "temperature")).containsText("°F");
        assertThat(part(page, "basis")).containsText("Sets 8.0° above boiling water");
        page.reload();
        assertThat(part(page, "temperature")).containsText("°F");
    }

    @Test
    void aCall_takesTheKeyboardAloneAndStandsAcknowledgedAfterwards() {
        serve(Scenario.CLEAN, 1500);
        Page page = SERVED.page(390, 844, ColorScheme.DARK);
        assertThat(part(page, "call-title")).hasText("Start the set tests now.");
        assertThat(part(page, "sentence")).isHidden();
        assertThat(page.locator("body")).hasAttribute("data-look", "call");
        page.keyboard().press("Space");
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "sentence-state")).hasText("Close to setting.");
        assertThat(part(page, "others")).containsText("Start the set tests now. You know.");
    }

    @Test
    void theCallsButton_isLargeEnoughForAStickyFinger() {
        serve(Scenario.CLEAN, 1500);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "acknowledge")).isVisible();
        assertThat(part(page, "acknowledge").boundingBox().height).isGreaterThanOrEqualTo(72);
    }

    @Test
    void whatToDo_isWrittenLarge_andTheNumbersBehindItBelow() {
        serve(Scenario.SCORCH, 1480);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "call-title")).hasText("The base may be catching.");
        assertThat(part(page, "call-act")).hasText("Stir down to the base, and turn the heat down.");
        assertThat(part(page, "call-why")).hasText(Pattern.compile("It climbs [\\d.]+° a minute.*"));
        assertThat(px(part(page, "call-act"))).isGreaterThan(24).isGreaterThan(px(part(page, "call-why")));
        assertThat(part(page, "call-act").boundingBox().y)
                .isLessThan(part(page, "call-why").boundingBox().y);
    }

    private static double px(Locator words) {
        return ((Number) words.evaluate("element => parseFloat(getComputedStyle(element).fontSize)")).doubleValue();
    }

    @ParameterizedTest
    @CsvSource({"60", "220", "900", "1500"})
    void onANarrowPhone_noWordIsBroken(double untilS) {
        serve(Scenario.CLEAN, untilS);
        Page page = SERVED.page(360, 740, ColorScheme.LIGHT);
        assertThat(part(page, "temperature")).isVisible();
        Object broken = page.evaluate("""
                () => [...document.querySelectorAll('main h1, main h1 span, main p')].flatMap((element) =>
                  [...element.childNodes].filter((node) => node.nodeType === 3).flatMap((node) =>
                    [...node.data.matchAll(/[^\\s-]+/g)].filter(({ 0: word, index }) => {
                      const range = document.createRange();
                      range.setStart(node, index);
                      range.setEnd(node, index + word.length);
                      return new Set([...range.getClientRects()].map((line) => line.top)).size > 1;
                    }).map(([word]) => word)))
                """);
        assertThat(broken).isEqualTo(List.of());
    }

    @Test
    void onAWideScreen_theSetTestsStandBelowTheTemperature_andThePictureStaysInSight() {
        serve(Scenario.CLEAN, 1500);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "call")).isVisible();
        var tests = part(page, "tests").boundingBox();
        var heat = page.locator(".heat").boundingBox();
        var call = part(page, "call").boundingBox();
        assertThat(tests.x).isGreaterThan(call.x + call.width);
        assertThat(tests.y).isGreaterThanOrEqualTo(heat.y + heat.height);
        assertThat(part(page, "climb").boundingBox().y).isLessThan(680);
        Browsers.nothingSticksOut(page);
    }

    @Test
    void theTimesBelowTheClimb_areTimesOfDayOnceTheCookHasBegun() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        HeldTrace probe = new HeldTrace("pan", trace);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", Cooks.settings(trace), 1);
        SERVED.serve(new Kitchen(plan, clock -> List.of(probe), System::nanoTime));
        BrowserContext context = SERVED.context(1180, 820, ColorScheme.LIGHT);
        context.addInitScript("""
                window.drawn = [];
                const fill = CanvasRenderingContext2D.prototype.fillText;
                CanvasRenderingContext2D.prototype.fillText = function (words, ...where) {
                  window.drawn.push(words);
                  return fill.call(this, words, ...where);
                };
                """);
        Page page = Browsers.open(context, SERVED.address());
        Hearing.await("the minutes of no cook", () -> drawn(page).contains("4 min"));
        probe.playUntil(60);
        Hearing.await("times of day", () -> drawn(page).stream().anyMatch(words -> words.matches("\\d\\d:\\d\\d")));
        drawn(page);
        probe.playUntil(70);
        Hearing.await("the next picture", () -> !drawn(page).isEmpty());
        probe.playUntil(80);
        Hearing.await(
                "the next picture",
                () -> page.evaluate("window.drawn.includes('now')").equals(true));
        assertThat(drawn(page)).noneMatch(words -> words.endsWith(" min"));
    }

    /** What was written into the picture since this was last asked. */
    @SuppressWarnings("unchecked") // a list of strings comes as one
    private static List<String> drawn(Page page) {
        return (List<String>) page.evaluate("window.drawn.splice(0)");
    }

    @Test
    void aCall_soundsOnceTheCookAllowedIt() {
        serve(Scenario.CLEAN, 1500);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        // A stub that counts the tones through the browser's own interface.
        page.evaluate("() => { window.tones = 0; const start = OscillatorNode.prototype.start;"
                + "OscillatorNode.prototype.start = function (at) { window.tones++; return start.call(this, at); }; }");
        assertThat(part(page, "sound")).hasText("Turn the sound on");
        part(page, "sound").click();
        assertThat(part(page, "sound")).hasText("Sound is on");
        // Two tones say that it works, three are the call, three are the call again.
        Hearing.await("the tones", () -> ((Number) page.evaluate("window.tones")).intValue() >= 8);
        part(page, "acknowledge").click();
        assertThat(part(page, "call")).isHidden();
    }

    @Test
    void aCallThatCanWait_isPutAsideAndTakenBack() {
        serve(Scenario.STALL, 1270);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "not-now")).hasText("Not now");
        Browsers.axeFindsNothing(page);
        Browsers.nothingSticksOut(page);
        part(page, "not-now").click();
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "others")).containsText(Pattern.compile("Put aside until \\d\\d:\\d\\d: It is cooling"));
        Browsers.axeFindsNothing(page);
        Browsers.nothingSticksOut(page);
        part(page, "others").getByText("Take back").click();
        assertThat(part(page, "call-title")).containsText("It is cooling");
        assertThat(part(page, "others")).not().containsText("Put aside");
    }

    @Test
    void aCallThatCannotWait_isNotToBePutAside() {
        serve(Scenario.CLEAN, 1500);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "acknowledge")).isVisible();
        assertThat(part(page, "not-now")).hasCount(0);
    }

    @Test
    void everyCall_comesInOrderOfUrgency() {
        serve(Scenario.STALL, 1270);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "call-title")).containsText("It is cooling");
        assertThat(part(page, "call-act")).hasText("Is the heat on?");
        Browsers.axeFindsNothing(page);
    }

    @Test
    void whatCallsBesides_isSaidBelowTheCallOnTop() {
        serve(Scenario.SCORCH, 1480);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "call-title"))
                .hasText("The base may be catching."); // it burns while the set tests can wait
        assertThat(part(page, "call-also")).containsText("Also: Start the set tests now.");
        assertThat(part(page, "rise")).not().containsText("past setting");
        Browsers.isAccessibleAndFits(page);
        part(page, "acknowledge").click();
        assertThat(part(page, "call-title")).hasText("Start the set tests now.");
        assertThat(part(page, "call-also")).isEmpty();
    }

    @Test
    void aProbeOutOfThePan_saysNothingOfTheWayToGo() {
        serve(Scenario.PROBE_OUT, 1170);
        Page page = SERVED.page(390, 844, ColorScheme.DARK);
        assertThat(part(page, "call-title")).containsText("The reading fell");
        assertThat(part(page, "rise")).hasText("This is what the probe reads; the pan may be elsewhere.");
    }

    @Test
    void aNewCook_isOfferedWhenThePanIsOffTheHeat() {
        serve(Scenario.CLEAN, 1820);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        assertThat(part(page, "sentence-state")).hasText("Off the heat.");
        part(page, "new-cook").click();
        assertThat(part(page, "sentence-state")).hasText("Waiting for the thermometer.");
        assertThat(part(page, "temperature")).isHidden();
    }

    @Test
    void aNewCook_isBegunOnce_howeverOftenItIsTapped() {
        serve(Scenario.CLEAN, 1820);
        Page page = SERVED.page(1180, 820, ColorScheme.LIGHT);
        List<Route> held = new ArrayList<>();
        page.route("**/api/cook", held::add);
        part(page, "new-cook").click();
        part(page, "new-cook").click();
        page.waitForCondition(() -> held.size() == 2);
        List<Response> answers = new CopyOnWriteArrayList<>();
        page.onResponse(answers::add);
        held.forEach(Route::resume);
        page.waitForCondition(() -> answers.size() == 2);
        for (Response answer : answers) {
            assertThat(answer.status()).isEqualTo(201);
            assertThat(answer.text()).contains("\"cook\":{\"number\":2,");
        }
    }

    @Test
    void aTapThatIsRefused_saysWhy_untilItSucceeds() {
        serve(Scenario.STALL, 1270);
        Page page = SERVED.page(390, 844, ColorScheme.LIGHT);
        String busy = "{\"error\": \"Spoonfall could not answer just now; try again\"}";
        page.route(
                "**/api/alarms/**",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setStatus(503)
                        .setContentType("application/json")
                        .setBody(busy)));
        part(page, "not-now").click();
        assertThat(part(page, "act-error")).hasText("Spoonfall could not answer just now; try again.");
        assertThat(part(page, "call")).isVisible();
        Browsers.isAccessibleAndFits(page);
        page.unroute("**/api/alarms/**");
        part(page, "acknowledge").click();
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "act-error")).isHidden();
    }

    @Test
    void nothing_isAskedFromElsewhere() {
        serve(Scenario.CLEAN, 900);
        Page page = SERVED.context(1180, 820, ColorScheme.LIGHT).newPage();
        List<String> asked = new CopyOnWriteArrayList<>();
        page.onRequest(request -> asked.add(request.url()));
        page.navigate(SERVED.address());
        assertThat(part(page, "temperature")).isVisible();
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith(SERVED.address()));
    }
}
