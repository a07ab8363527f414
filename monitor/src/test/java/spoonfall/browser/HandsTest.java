package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;

/** The page hears and is heard, in a real browser whose voice, screen and notices are stubs that record. */
final class HandsTest {
    /** A browser that has all of it, and notes what the page asks of it. */
    private static final String RECORDS = """
            window.spoken = []; window.hushed = 0; window.locks = 0; window.notices = [];
            window.SpeechSynthesisUtterance = class extends EventTarget { constructor(text) { super(); this.text = text; } };
            Object.defineProperty(window, 'speechSynthesis', { value: {
              speak(words) {
                window.spoken.push(words.text);
                setTimeout(() => { words.dispatchEvent(new Event('start')); words.dispatchEvent(new Event('end')); }, 5);
              },
              cancel() { window.hushed++; }, resume() {} } });
            Object.defineProperty(navigator, 'wakeLock', { value: { async request() {
              window.locks++; const lock = new EventTarget(); lock.released = false; window.lock = lock; return lock; } } });
            window.Notification = class extends EventTarget {
              static permission = 'default';
              static async requestPermission() { return (Notification.permission = 'granted'); }
              constructor(title, options) { super(); window.notices.push(title + ' ' + options.body); }
              close() { window.notices.push('closed'); } };
            Object.defineProperty(navigator.serviceWorker, 'getRegistration', { value: async () => undefined });
            window.hide = (hidden) => {
              Object.defineProperty(document, 'hidden', { value: hidden, configurable: true });
              Object.defineProperty(document, 'visibilityState', { value: hidden ? 'hidden' : 'visible', configurable: true });
              document.dispatchEvent(new Event('visibilitychange')); };
            """;

    /** A browser that has none of it. */
    private static final String HAS_NOTHING = """
            Object.defineProperty(window, 'speechSynthesis', { value: undefined });
            Object.defineProperty(navigator, 'wakeLock', { value: undefined });
            delete window.Notification;
            """;

    /** A browser that refuses everything. */
    private static final String REFUSES = """
            window.SpeechSynthesisUtterance = class extends EventTarget { constructor(text) { super(); this.text = text; } };
            Object.defineProperty(window, 'speechSynthesis', { value: {
              speak(words) { const error = new Event('error'); error.error = 'synthesis-failed'; setTimeout(() => words.dispatchEvent(error), 5); },
              cancel() {}, resume() {} } });
            Object.defineProperty(navigator, 'wakeLock', { value: { async request() { throw new DOMException('no', 'NotAllowedError'); } } });
            window.Notification = class { static permission = 'denied'; };
            """;

    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private HeldTrace probe = new HeldTrace("pan", Cooks.trace(Scenario.CLEAN, 1));

    private void serve(int port) {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1);
        HeldTrace held = new HeldTrace("pan", trace);
        SERVED.serve(Kitchens.one(new Kitchen(plan, clock -> List.of(held), System::nanoTime)), port);
        probe = held;
        probe.playUntil(900);
    }

    private Page page(String browserThat, int width, int height, ColorScheme scheme) {
        BrowserContext context = SERVED.context(width, height, scheme);
        context.addInitScript(browserThat);
        Page page = Browsers.open(context, SERVED.address());
        assertThat(part(page, "sentence-state")).hasText(Pattern.compile("Climbing .*"));
        return page;
    }

    private Page page(String browserThat) {
        return page(browserThat, 390, 844, ColorScheme.LIGHT);
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static void awaitTrue(Page page, String what) {
        Hearing.await(what, () -> Boolean.TRUE.equals(page.evaluate(what)));
    }

    private static Object spoken(Page page) {
        return page.evaluate("window.spoken");
    }

    private void callTheCook(Page page) {
        probe.playUntil(1500);
        assertThat(part(page, "call-title")).hasText("Start the set tests now.");
    }

    @Test
    void theVoice_saysTheCallInWordsAndIsOffByOneTap() {
        serve(0);
        Page page = page(RECORDS);
        assertThat(part(page, "voice")).isHidden();
        part(page, "sound").click();
        assertThat(part(page, "voice")).hasText("Voice is on");
        awaitTrue(page, "window.spoken.includes('Spoonfall speaks here.')");
        callTheCook(page);
        awaitTrue(
                page,
                "window.spoken.includes('Start the set tests now. Take the pan off the heat for each one: a plate needs 60 to 120 seconds.')");
        part(page, "voice").click();
        assertThat(part(page, "voice")).hasText("Voice is off");
        awaitTrue(page, "window.hushed > 0");
        Object soFar = spoken(page);
        part(page, "acknowledge").click();
        assertThat(part(page, "call")).isHidden();
        probe.playUntil(1560);
        assertThat(spoken(page)).isEqualTo(soFar);
        page.reload();
        assertThat(part(page, "sound")).hasText("Sound starts with a tap");
        part(page, "temperature").click();
        assertThat(part(page, "sound")).hasText("Sound is on");
        assertThat(part(page, "voice")).hasText("Voice is off");
    }

    @Test
    void nothing_isSpokenBeforeTheCookAllowsIt() {
        serve(0);
        Page page = page(RECORDS);
        callTheCook(page);
        assertThat(spoken(page)).isEqualTo(List.of());
        part(page, "sound").click();
        awaitTrue(page, "window.spoken.length === 1 && window.spoken[0].startsWith('Start the set tests now')");
    }

    @Test
    void theScreen_staysOnAndIsAskedForAgainWhenThePageComesBack() {
        serve(0);
        Page page = page(RECORDS);
        awaitTrue(page, "window.locks === 1");
        page.evaluate("() => { window.lock.released = true; window.hide(true); window.hide(false); }");
        awaitTrue(page, "window.locks === 2");
        part(page, "hands").locator("summary").click();
        assertThat(part(page, "hands-screen")).hasText("The screen stays on while this page is in front.");
    }

    @Test
    void inTheBackground_aCallIsANoticeOnceTheCookAskedForIt() {
        serve(0);
        Page page = page(RECORDS);
        part(page, "hands").locator("summary").click();
        page.getByText("Show calls as notices too").click();
        assertThat(part(page, "hands-notices")).containsText("come as notices of the system too");
        page.evaluate("() => window.hide(true)");
        probe.playUntil(1500);
        awaitTrue(page, "window.notices.length === 1 && window.notices[0].includes('Start the set tests now.')");
        page.evaluate("() => window.hide(false)");
        awaitTrue(page, "window.notices.includes('closed')");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Space", "Enter", "PageDown", "ArrowRight"})
    void aKeyOfAPedal_answersTheCallWhateverWasTappedLast(String key) {
        serve(0);
        Page page = page(RECORDS);
        part(page, "unit").click();
        callTheCook(page);
        page.keyboard().press(key);
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "unit")).hasText("Show °C");
    }

    @Test
    void aTapAnywhereOnTheCall_answersIt() {
        serve(0);
        Page page = page(RECORDS);
        callTheCook(page);
        part(page, "call-act").click();
        assertThat(part(page, "call")).isHidden();
        assertThat(part(page, "others")).containsText("You know.");
    }

    @Test
    void aPedal_isLearntForgottenAndKept() {
        serve(0);
        Page page = page(RECORDS);
        part(page, "hands").locator("summary").click();
        page.getByText("Learn my pedal").click();
        assertThat(part(page, "hands-learning")).containsText("Press the pedal now.");
        page.keyboard().press("b");
        assertThat(part(page, "hands-pedal")).containsText("Your pedal types b.");
        Browsers.isAccessibleAndFits(page);
        page.reload();
        callTheCook(page);
        page.keyboard().press("x");
        assertThat(part(page, "call")).isVisible();
        page.keyboard().press("b");
        assertThat(part(page, "call")).isHidden();
        part(page, "hands").locator("summary").click();
        page.getByText("Forget my pedal").click();
        assertThat(part(page, "hands-pedal")).not().containsText("Your pedal");
    }

    @Test
    void aKeyHeldDownAndATapThatArrivesTwice_answerOnce() {
        serve(0);
        Page page = page(RECORDS);
        callTheCook(page);
        page.evaluate("() => { window.posts = 0; const real = window.fetch;"
                + " window.fetch = (...all) => { window.posts++; return real(...all); }; }");
        page.keyboard().down("Enter");
        page.keyboard().down("Enter");
        page.keyboard().down("Enter");
        page.keyboard().up("Enter");
        assertThat(part(page, "call")).isHidden();
        assertThat(page.evaluate("window.posts")).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "390,844,DARK", "1180,820,DARK", "1440,900,LIGHT"})
    void aBrowserThatHasNothing_saysWhatItCannotDoAndCallsAllTheSame(int width, int height, ColorScheme scheme) {
        serve(0);
        Page page = page(HAS_NOTHING, width, height, scheme);
        part(page, "sound").click();
        assertThat(part(page, "hands").locator("summary"))
                .hasText("Sound and voice: no voice here; the screen may go dark");
        part(page, "hands").locator("summary").click();
        assertThat(part(page, "hands-voice")).containsText("has no voice");
        assertThat(part(page, "hands-screen")).containsText("cannot keep it on");
        assertThat(part(page, "hands-notices")).containsText("shows no notices");
        Browsers.isAccessibleAndFits(page);
        callTheCook(page);
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void aBrowserThatRefusesEverything_saysSo() {
        serve(0);
        Page page = page(REFUSES);
        part(page, "sound").click();
        assertThat(part(page, "hands").locator("summary"))
                .hasText("Sound and voice: no voice here; the screen may go dark");
        part(page, "hands").locator("summary").click();
        assertThat(part(page, "hands-voice")).containsText("spoke no word just now");
        assertThat(part(page, "hands-screen")).containsText("would not keep it on just now");
        assertThat(part(page, "hands-notices")).containsText("refused in this browser");
        assertThat(page.getByText("Show calls as notices too")).isHidden();
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void whenTheServiceWasAwayAWhile_oneSentenceSaysWhatStands() {
        serve(0);
        int port = SERVED.port();
        Page page = page(RECORDS);
        part(page, "sound").click();
        awaitTrue(page, "window.spoken.length === 1");
        SERVED.stop();
        awaitTrue(page, "window.spoken.includes('No word from Spoonfall. Watch the pan yourself.')");
        serve(port);
        assertThat(part(page, "temperature")).isVisible();
        assertThat((List<?>) spoken(page)).hasSizeLessThanOrEqualTo(3);
        callTheCook(page);
        awaitTrue(page, "window.spoken.filter((text) => text.startsWith('Start the set tests now')).length === 1");
    }

    @Test
    void anInstalledPage_saysThatItIsOfflineAndComesBackByItself() {
        serve(0);
        int port = SERVED.port();
        Page page = page("");
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        awaitTrue(page, "navigator.serviceWorker.controller !== null");
        SERVED.stop();
        page.navigate("http://localhost:" + port + "/");
        assertThat(page.locator("h1")).hasText("Spoonfall cannot be reached.");
        assertThat(page.locator("body")).not().containsText("°");
        assertThat(part(page, "where")).hasText("localhost:" + port);
        Browsers.isAccessibleAndFits(page);
        serve(port);
        assertThat(part(page, "temperature")).isVisible();
        assertThat((List<?>) page.evaluate("() => caches.keys()")).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"900,Climbing", "1500,Start the set tests now.", "1780,It has reached", "1820,Off the heat."})
    void textAtTwiceTheSizeOnAPhone_isAllThere(double untilS, String says) {
        serve(0);
        Page page = page(RECORDS);
        part(page, "sound").click();
        part(page, "hands").locator("summary").click();
        probe.playUntil(untilS);
        assertThat(page.locator("main")).containsText(says);
        page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }");
        Object lost = page.evaluate("""
                () => [...document.querySelectorAll('body *')].filter((each) => {
                  const box = each.getBoundingClientRect();
                  const seen = box.width > 0 && !each.closest('.climb, .check-picture');
                  const cut = each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).overflowX !== 'visible';
                  return seen && (box.left < -1 || box.right > innerWidth + 1 || cut);
                }).map((each) => each.outerHTML.slice(0, 120))
                """);
        assertThat(lost).as("what is cut off or sticks out").isEqualTo(List.of());
        Browsers.isAccessibleAndFits(page);
    }
}
