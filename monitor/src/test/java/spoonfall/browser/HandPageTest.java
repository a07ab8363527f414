package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
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
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.hand.HandProbe;

/** The number pad in a real browser, on a clock that the test moves. */
final class HandPageTest {
    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final AtomicLong aheadNanos = new AtomicLong();

    @BeforeEach
    void serve() {
        KitchenPlan plan = KitchenPlan.live(
                "Hollin Bank",
                "Seville orange and ginger, batch 14",
                new CookSettings(WaterBoil.atElevation(1240), 4.44),
                1);
        SERVED.serve(new Kitchen(
                plan, clock -> List.of(new HandProbe("pan", clock)), () -> System.nanoTime() + aheadNanos.get()));
    }

    private Page page(int width, int height, ColorScheme scheme) {
        Page page = SERVED.page(width, height, scheme);
        assertThat(part(page, "hand")).isVisible();
        return page;
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static Locator key(Page page, String name) {
        return page.locator("[data-key='" + name + "']");
    }

    private static void tap(Page page, String number) {
        number.chars().forEach(c -> key(page, Character.toString(c)).click());
        key(page, "enter").click();
    }

    private void pass(double seconds) {
        aheadNanos.addAndGet(Math.round(seconds * 1e9));
    }

    /** A climb, typed every minute on the keyboard. */
    private void climb(Page page, double... temperaturesC) {
        for (double temperatureC : temperaturesC) {
            pass(60);
            String number = Double.toString(temperatureC);
            page.keyboard().type(number);
            page.keyboard().press("Enter");
            assertThat(part(page, "hand-back")).hasText("Take back " + number.replace(".0", "") + " °C");
            assertThat(part(page, "temperature").locator(".digits")).hasText(number);
        }
    }

    /** No reading is taken back until what this returns is run, which waits for the first. */
    private static Runnable holdBackWhatIsTakenBack(Page page) {
        List<Route> held = new ArrayList<>();
        page.route("**/api/readings/*", held::add);
        return () -> {
            page.waitForCondition(() -> !held.isEmpty());
            held.forEach(Route::resume);
        };
    }

    @Test
    void whatIsTypedWhileAReadingIsTakenBack_isSent() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        tap(page, "96.5");
        assertThat(part(page, "hand-back")).hasText("Take back 96.5 °C");
        Runnable letGo = holdBackWhatIsTakenBack(page);
        part(page, "hand-back").click();
        tap(page, "97");
        letGo.run();
        assertThat(part(page, "temperature").locator(".digits")).hasText("97.0");
        assertThat(part(page, "hand-back")).hasText("Take back 97 °C");
    }

    @Test
    void aQuickKeyPressedWhileAReadingIsTakenBack_countsFromTheOneBefore() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        climb(page, 96.5, 98);
        Runnable letGo = holdBackWhatIsTakenBack(page);
        part(page, "hand-back").click();
        key(page, "step-0").click();
        letGo.run();
        assertThat(part(page, "hand-back")).hasText("Take back 97 °C");
        assertThat(part(page, "temperature").locator(".digits")).hasText("97.0");
    }

    @Test
    void aQuickKeyPressedWhileAReadingIsLost_doesNotCountLater() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        climb(page, 96.5, 98);
        List<Route> held = new ArrayList<>();
        page.route("**/api/readings", held::add);
        tap(page, "99");
        page.waitForCondition(() -> !held.isEmpty());
        key(page, "step-0").click();
        held.forEach(Route::abort);
        assertThat(part(page, "hand-error")).containsText("No word from Spoonfall");
        page.unroute("**/api/readings");
        key(page, "enter").click();
        assertThat(part(page, "hand-back")).hasText("Take back 99 °C");
        page.waitForTimeout(300); // so long the key's reading would take
        assertThat(part(page, "hand-back")).hasText("Take back 99 °C");
    }

    @Test
    void anAnswerGivenWhileAReadingIsTakenBack_isSent() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        climb(page, 99, 99.5);
        tap(page, "212");
        assertThat(part(page, "hand-question")).containsText("Is that °F?");
        Runnable letGo = holdBackWhatIsTakenBack(page);
        part(page, "hand-back").click();
        part(page, "hand-question").locator("button").first().click();
        letGo.run();
        assertThat(part(page, "hand-back")).hasText("Take back 212 °F");
        assertThat(part(page, "temperature")).hasText("100.0°C");
    }

    @ParameterizedTest
    @CsvSource({"390,844,LIGHT", "390,844,DARK", "1180,820,LIGHT", "1180,820,DARK", "1440,900,LIGHT", "1440,900,DARK"})
    void thePad_isAccessibleAndFits_andItsKeysAreLarge(int width, int height, ColorScheme scheme) {
        Page page = page(width, height, scheme);
        assertThat(part(page, "sentence-state")).hasText("Type what the thermometer shows.");
        assertThat(key(page, "same")).isDisabled();
        Browsers.isAccessibleAndFits(page);
        tap(page, "96.5");
        assertThat(part(page, "hand-back")).hasText("Take back 96.5 °C");
        climb(page, 97, 97, 97.5, 97.5, 98, 98, 98.5);
        for (Locator one : part(page, "hand-keys").locator("button").all()) {
            BoundingBox box = one.boundingBox();
            assertThat(box.height).isGreaterThanOrEqualTo(72);
            assertThat(box.width).isGreaterThanOrEqualTo(72);
        }
        Browsers.isAccessibleAndFits(page);
        tap(page, "1004");
        assertThat(part(page, "hand-question")).containsText("Did you mean 100.4 °C?");
        Browsers.isAccessibleAndFits(page);
    }

    @Test
    void fingers_typeAReading_andTheQuickKeysGoOnFromIt() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        key(page, "9").click();
        key(page, "8").click();
        key(page, "7").click();
        key(page, "back").click();
        assertThat(part(page, "temperature").locator(".digits")).hasText("98");
        key(page, "enter").click();
        assertThat(part(page, "temperature")).hasText("98.0°C");
        assertThat(part(page, "hand-when")).hasText(Pattern.compile("Typed at \\d\\d:\\d\\d\\."));
        pass(60);
        key(page, "step-0").click();
        assertThat(part(page, "temperature")).hasText("98.5°C");
        pass(60);
        part(page, "unit").click();
        page.waitForTimeout(900);
        assertThat(key(page, "step-0")).hasText("+1");
        key(page, "step-0").click();
        assertThat(part(page, "temperature")).hasText("210.3°F");
        part(page, "hand-back").click();
        assertThat(part(page, "temperature")).hasText("209.3°F");
        assertThat(part(page, "hand-back")).isHidden();
    }

    @Test
    void aKeyboard_typesWithoutTouchingThePad() {
        Page page = page(1440, 900, ColorScheme.DARK);
        assertThat(key(page, "same")).isVisible();
        page.keyboard().type("97,5");
        assertThat(part(page, "temperature").locator(".digits")).hasText("97.5");
        page.keyboard().press("Enter");
        assertThat(part(page, "hand-when")).containsText("Typed at");
        page.keyboard().type("9");
        page.keyboard().press("Escape");
        assertThat(part(page, "temperature")).hasText("97.5°C");
    }

    @Test
    void aQuestion_isAnsweredByOneTap_andNothingIsTakenBefore() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        tap(page, "99.5");
        assertThat(part(page, "temperature")).hasText("99.5°C");
        pass(60);
        tap(page, "212");
        assertThat(part(page, "hand-question")).containsText("Is that °F?");
        assertThat(part(page, "hand-keys")).isHidden();
        assertThat(part(page, "hand-question").locator("button").first()).isFocused();
        part(page, "hand-question").locator("button").first().click();
        assertThat(part(page, "hand-question")).isHidden();
        assertThat(part(page, "temperature")).hasText("100.0°C");
        pass(60);
        tap(page, "110");
        assertThat(part(page, "hand-question")).containsText("Is that right?");
        part(page, "hand-question").locator("button").last().click();
        assertThat(part(page, "temperature")).hasText("100.0°C");
        assertThat(key(page, "7")).isFocused();
    }

    /** As when a line above the keys grows by a word while a finger is down. */
    @Test
    void aTap_isOfTheKeyThatTheFingerWentDownOn_thoughThePageMovesBeneathIt() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        StringBuilder soFar = new StringBuilder();
        for (String typed : new String[] {"2", "1", "7"}) {
            key(page, typed).hover();
            page.mouse().down();
            page.evaluate(
                    "(by) => document.querySelector('[data-testid=hand-keys]').style.setProperty('margin-top', by)",
                    typed.equals("1") ? "10px" : "90px");
            page.mouse().up();
            soFar.append(typed);
            assertThat(part(page, "temperature").locator(".digits")).hasText(soFar.toString());
        }
    }

    @Test
    void theFirstDigit_movesNoKeyAwayFromTheNext() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        assertThat(part(page, "sentence-state")).hasText("Type what the thermometer shows.");
        assertThat(part(page, "temperature")).isHidden();
        double beforePx = key(page, "7").boundingBox().y;
        key(page, "9").click();
        assertThat(part(page, "temperature").locator(".digits")).hasText("9");
        assertThat(key(page, "7").boundingBox().y).isCloseTo(beforePx, within(1.0));
    }

    @Test
    void aFingerThatDragsThePage_typesNothing_andAKeyBeneathTheKeyboardsFocusTypesOnce() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        key(page, "9").click();
        assertThat(part(page, "temperature").locator(".digits")).hasText("9");
        key(page, "5").hover();
        page.mouse().down();
        key(page, "8").hover();
        page.mouse().up();
        key(page, "8").focus();
        page.keyboard().press("Space");
        assertThat(part(page, "temperature").locator(".digits")).hasText("98");
    }

    @Test
    void twoPages_typeForOnePan() {
        Page phone = page(390, 844, ColorScheme.LIGHT);
        Page desktop = page(1440, 900, ColorScheme.DARK);
        tap(phone, "97");
        assertThat(part(desktop, "temperature")).hasText("97.0°C");
        pass(60);
        key(phone, "9").click();
        tap(desktop, "97.5");
        assertThat(part(desktop, "temperature")).hasText("97.5°C");
        assertThat(part(phone, "temperature").locator(".digits")).hasText("9");
        key(phone, "8").click();
        key(phone, "enter").click();
        assertThat(part(desktop, "temperature")).hasText("98.0°C");
        part(desktop, "hand-back").click();
        assertThat(part(phone, "temperature")).hasText("97.5°C");
    }

    @Test
    void afterTwoMinutes_itRemindsQuietly_andAfterFiveTheDigitsLeave() {
        Page page = page(390, 844, ColorScheme.LIGHT);
        tap(page, "60");
        assertThat(part(page, "hand-when")).containsText("Typed at");
        pass(121);
        assertThat(part(page, "hand-when")).containsText("Read the thermometer again.");
        assertThat(part(page, "call")).isHidden();
        pass(182);
        assertThat(part(page, "call")).containsText("No reading was typed since");
        assertThat(part(page, "temperature")).isHidden();
        assertThat(part(page, "hand-keys")).isVisible();
        Browsers.isAccessibleAndFits(page);
    }
}
