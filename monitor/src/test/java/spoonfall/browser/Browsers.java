package spoonfall.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The real Chromium of this machine, driven by Playwright through this machine's Node.js. */
final class Browsers implements AutoCloseable {
    private static final List<String> FLAGS = List.of(
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** What a page is to show is waited for so long: a machine that is busy otherwise draws late, and is right all the same. */
    private static final double PATIENCE_MS = 30_000;

    private final Playwright playwright;
    private final Browser browser;

    private Browsers(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    static Browsers open() {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        Playwright playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_NODEJS_PATH", program("node"), "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        List<String> flags = new ArrayList<>(FLAGS);
        if ("root".equals(System.getProperty("user.name"))) {
            flags.add("--no-sandbox");
        }
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of(program("chromium")))
                        .setArgs(flags));
        return new Browsers(playwright, browser);
    }

    Browser browser() {
        return browser;
    }

    /** A browser of its own, of that size and scheme. */
    BrowserContext context(int width, int height, ColorScheme scheme) {
        return browser.newContext(options(width, height, scheme));
    }

    /** The same on a screen for fingers. */
    BrowserContext touchContext(int width, int height, ColorScheme scheme) {
        return browser.newContext(options(width, height, scheme).setHasTouch(true));
    }

    private static Browser.NewContextOptions options(int width, int height, ColorScheme scheme) {
        return new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(scheme);
    }

    /** A page at that address; an error in it fails the test. */
    static Page open(BrowserContext context, String address) {
        Page page = context.newPage();
        page.onPageError(error -> {
            throw new AssertionError(error);
        });
        page.navigate(address);
        return page;
    }

    /** Axe finds nothing, and nothing sticks out sideways. */
    static void isAccessibleAndFits(Page page) {
        axeFindsNothing(page);
        nothingSticksOut(page);
    }

    /** Presses a key on what has the keyboard's focus, once it is there to have it. */
    static void press(Locator control, String key) {
        PlaywrightAssertions.assertThat(control).isVisible();
        control.focus();
        PlaywrightAssertions.assertThat(control).isFocused();
        control.page().keyboard().press(key);
    }

    static void axeFindsNothing(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("what axe finds")
                .isEmpty();
    }

    static void nothingSticksOut(Page page) {
        Object wider = page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth");
        assertThat(wider).as("the page is wider than the screen").isEqualTo(false);
    }

    private static String program(String name) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(":", -1)) {
            Path file = Path.of(folder, name);
            if (Files.isExecutable(file)) {
                return file.toString();
            }
        }
        throw new IllegalStateException("no " + name + " on the PATH; ./check installs it");
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
