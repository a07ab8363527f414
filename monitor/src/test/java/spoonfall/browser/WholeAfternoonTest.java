package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;

/**
 * From cold plates to jars that sealed, on a phone and a tablet that show the same, once by fingers and once by the keyboard
 * alone. The pan is a simulated cook (seed 1) until its set tests; time passes when the test lets it.
 */
final class WholeAfternoonTest {
    private static final int JARS = 6;
    private static final int TWELVE_HOURS_S = 12 * 3600;

    @RegisterExtension
    private static final ServedPage SERVED = new ServedPage();

    private final Trace trace = Cooks.trace(Scenario.PAST, 1);
    private final AtomicLong nanos = new AtomicLong(1_000_000_000L);
    private final SteppedProbe probe = new SteppedProbe(trace, nanos::get);
    private final Kitchen pan = new Kitchen(
            KitchenPlan.live("Hollin Bank", "Seville orange and ginger, batch 14", Cooks.settings(trace), 1),
            clock -> List.of(probe),
            nanos::get);
    private CookAtPage cook = new CookAtPage.ByFingers();
    private double playedS;

    @BeforeEach
    void serve() {
        SERVED.serve(pan);
    }

    @Test
    void anAfternoonByFingers_endsInJarsThatSealed() {
        wholeAfternoon("taps", new CookAtPage.ByFingers());
    }

    @Test
    void anAfternoonByTheKeyboardAlone_endsInJarsThatSealed() {
        wholeAfternoon("key presses", new CookAtPage.ByKeys());
    }

    private void wholeAfternoon(String counted, CookAtPage newCook) {
        cook = newCook;
        Page phone = page(390, 844, ColorScheme.LIGHT);
        Page tablet = page(1180, 820, ColorScheme.DARK);
        climbs(phone, tablet);
        isTestedUntilItSets(phone, tablet);
        int set = cook.count();
        fillsTheJars(phone, tablet);
        int filled = cook.count();
        processes(phone, tablet);
        int lifted = cook.count();
        checksTheSeals(phone, tablet);
        System.out.printf(
                "%s: %d until it set, %d more until the jars were full and closed, %d more until they stood to cool, "
                        + "%d more for %d seals; %d in all%n",
                counted, set, filled - set, lifted - filled, cook.count() - lifted, JARS, cook.count());
    }

    private void climbs(Page phone, Page tablet) {
        cook.press(part(tablet, "to-afternoon"));
        assertThat(part(tablet, "afternoon-state")).hasText("First: soften the peel.");
        isSound(tablet);
        plays(60);
        assertThat(part(phone, "sentence-state")).hasText("Warming up.");
        plays(900);
        assertThat(part(phone, "sentence-state")).hasText("Climbing steadily.");
        assertThat(part(phone, "sentence-act")).containsText("Set tests in");
        assertThat(part(phone, "coming-up")).containsText("Put the plates in the freezer");
        assertThat(step(tablet, "boil")).hasAttribute("aria-current", "step");
        isSound(phone);
        for (String label : List.of("The plates are in", "The jars are warming")) {
            playsUntil(() -> label.equals(part(tablet, "afternoon-act").textContent()));
            act(tablet, label);
        }
        isSound(tablet);
        cook.press(back(tablet));
    }

    private void isTestedUntilItSets(Page phone, Page tablet) {
        playsUntil(this::isCalled);
        assertThat(part(tablet, "call-title")).hasText("Start the set tests now.");
        assertThat(part(phone, "call-title")).hasText("Start the set tests now.");
        isSound(phone);
        cook.press(part(phone, "acknowledge"));
        assertThat(part(phone, "call")).isHidden();
        assertThat(part(tablet, "call")).isHidden();

        test(phone, tablet, "seen-not-yet");
        assertThat(part(tablet, "test-title")).containsText("Not yet, at ");
        assertThat(part(tablet, "sentence-state")).hasText("Not yet. Back on the heat.");
        isSound(tablet);
        glides(94, 99.5, 60);
        playsUntil(this::isCalled);
        assertThat(part(tablet, "call-title")).hasText(Pattern.compile("Start the set tests now\\.|It has reached .*"));
        assertThat(part(phone, "call-act")).not().isEmpty();
        test(tablet, phone, "seen-set");
        assertThat(part(phone, "sentence-state")).hasText("Set. The boil is over.");
        assertThat(part(phone, "call")).isHidden();
        isSound(phone);
    }

    /** A plate test that is begun on one page and seen to be timed on the other. */
    private void test(Page one, Page other, String seen) {
        cook.press(part(one, "test-begin"));
        assertThat(part(other, "test-timer")).hasText(Pattern.compile("1:[23]\\d"));
        glides(99.5, 94, 92);
        for (Page page : List.of(one, other)) {
            assertThat(part(page, "call-title")).hasText("The plate has had its 90 seconds.");
            assertThat(part(page, "test-title")).hasText("The plate is ready: what do you see?");
        }
        isSound(one);
        cook.press(part(one, seen));
        assertThat(part(one, "call")).isHidden();
        assertThat(part(other, "call")).isHidden();
    }

    private void fillsTheJars(Page phone, Page tablet) {
        cook.press(part(phone, "to-afternoon"));
        assertThat(step(phone, "test")).hasAttribute("data-state", "done");
        glides(94, 80, 240);
        assertThat(step(phone, "off")).hasAttribute("data-state", "done");
        isSound(phone);
        act(phone, "The canner is on");
        glides(80, 70, 900);
        act(phone, "The jars are full");
        act(phone, "The rims are clean");
        act(phone, "The lids are on");
        assertThat(part(phone, "afternoon-state")).hasText("Now: process the jars.");
        isSound(phone);
        assertThat(part(tablet, "call")).isHidden();
    }

    private void processes(Page phone, Page tablet) {
        cook.press(part(phone, "afternoon-to-jars"));
        cook.press(part(tablet, "to-afternoon"));
        assertThat(part(phone, "jars-elevation")).hasValue("1240m");
        assertThat(part(phone, "jars-jar")).hasValue("half-pint");
        cook.choose(part(phone, "jars-headspace"), "1/4in", "1");
        cook.press(part(phone, "jars-look"));
        assertThat(part(phone, "jars-answer")).containsText("10 minutes");
        isSound(phone);
        cook.press(part(phone, "jars-put"));
        assertThat(part(phone, "jars-state")).hasText("Waiting for the boil.");
        assertThat(part(phone, "jars-load")).hasText("6 half-pint jars of marmalade, 10 minutes in boiling water.");
        assertThat(step(tablet, "process")).hasAttribute("data-state", "now");
        passes(300);
        jars(phone, "It is at a full boil");
        assertThat(part(phone, "jars-timer")).hasText("10:00");
        isSound(phone);
        passes(600);
        for (Page page : List.of(phone, tablet)) {
            assertThat(part(page, "call-title")).hasText("The jars' time is up.");
        }
        assertThat(step(tablet, "process")).hasAttribute("data-state", "done");
        isSound(tablet);
        jars(phone, "Heat and lid are off");
        assertThat(part(phone, "jars-timer")).hasText("5:00");
        assertThat(part(tablet, "call")).isHidden();
        passes(300);
        assertThat(part(tablet, "call-title")).hasText("The jars have rested.");
        jars(phone, "They are out");
        assertThat(part(phone, "jars-state")).hasText("The jars are cooling.");
        assertThat(step(tablet, "cool")).hasAttribute("data-state", "now");
        isSound(phone);
    }

    private void checksTheSeals(Page phone, Page tablet) {
        passes(TWELVE_HOURS_S + 60);
        assertThat(part(tablet, "afternoon-state")).hasText("The afternoon is over.");
        assertThat(part(tablet, "afternoon-due")).hasText("Check the seal of every jar.");
        assertThat(part(phone, "jars-state")).hasText("Check the seals.");
        isSound(tablet);
        isSound(phone);
        for (int jar = 1; jar <= JARS; jar++) {
            Locator sealed = phone.locator("[data-does='1-" + jar + "-yes']");
            cook.press(sealed);
            assertThat(sealed).hasAttribute("aria-pressed", "true");
        }
        assertThat(part(phone, "jars-load-1")).containsText("All 6 jars sealed.");
        assertThat(part(phone, "jars-state")).hasText("Every jar was looked at.");
        assertThat(part(phone, "call")).isHidden();
        isSound(phone);
    }

    /** The afternoon's one big act, once it has that label and hears. */
    private void act(Page page, String label) {
        Locator act = part(page, "afternoon-act");
        assertThat(act).hasText(label);
        assertThat(act).not().hasAttribute("aria-disabled", "true");
        cook.press(act);
        assertThat(act).not().hasText(label);
    }

    /** The jars' one big act, once it has that label and hears. */
    private void jars(Page page, String label) {
        Locator main = part(page, "jars-main");
        assertThat(main).hasText(label);
        double seenMs = nowMs(page);
        Hearing.await("the button to hear", () -> nowMs(page) - seenMs > 400);
        cook.press(main);
        assertThat(main).not().hasText(label);
    }

    private static double nowMs(Page page) {
        return ((Number) page.evaluate("performance.now()")).doubleValue();
    }

    private boolean isCalled() {
        return pan.state().join().pan().alarms().stream().anyMatch(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED);
    }

    private void plays(double untilS) {
        playedS = untilS;
        probe.play(untilS);
        follow();
    }

    private void playsUntil(BooleanSupplier condition) {
        while (!condition.getAsBoolean()) {
            assertThat(playedS).as("the end of the cook").isLessThan(trace.elapsedS(trace.size() - 1));
            plays(playedS + 20);
        }
    }

    private void glides(double fromC, double toC, int seconds) {
        probe.glide(fromC, toC, seconds);
        follow();
    }

    /** Time goes by with the thermometer on the table. */
    private void passes(int seconds) {
        for (int left = seconds; left > 0; left -= 600) {
            glides(22, 22, Math.min(left, 600));
        }
    }

    /** Lets the clock come after, once all that the probe said is taken in. */
    private void follow() {
        pan.state().join();
        nanos.set(probe.atNanos());
        pan.state().join();
    }

    private Page page(int width, int height, ColorScheme scheme) {
        return Browsers.open(SERVED.touchContext(width, height, scheme), SERVED.address());
    }

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    private static Locator step(Page page, String id) {
        return part(page, "afternoon-steps").locator("[data-id='" + id + "']");
    }

    private static Locator back(Page page) {
        return part(page, "afternoon").getByText("Back to the pan");
    }

    /** Every screen is looked at once, on the way that is gone by fingers. */
    private void isSound(Page page) {
        if (cook instanceof CookAtPage.ByKeys) {
            return;
        }
        Browsers.isAccessibleAndFits(page);
    }
}
