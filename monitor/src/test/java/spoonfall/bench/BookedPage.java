package spoonfall.bench;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import spoonfall.browser.Browsers;

/** Opens cooks of the book in a browser that has nothing of the page yet, and times until their picture is drawn. */
final class BookedPage {
    /** Notes when the picture came, in milliseconds since the page was asked for. */
    private static final String WATCH = """
            new MutationObserver((changes, self) => {
              if (document.querySelector('[data-testid="book-climb"] canvas')) {
                self.disconnect();
                requestAnimationFrame(() => requestAnimationFrame(() => { window.drawnMs = performance.now(); }));
              }
            }).observe(document, { childList: true, subtree: true });
            """;

    private BookedPage() {}

    /** Prints how long a cook's picture takes, and that of two. */
    static void print(String address, int cooks, int times) throws InterruptedException {
        double[] one = new double[times];
        double[] two = new double[times];
        try (Browsers browsers = Browsers.open()) {
            for (int i = 0; i < times; i++) {
                int id = cooks - i * (cooks / times) - 1;
                one[i] = drawnMs(browsers, address + "/#book/" + id);
                two[i] = drawnMs(browsers, address + "/#book/" + id + "/" + (cooks - id));
            }
        }
        BookBench.print("a cook's picture, page and browser cache cold, ms", one);
        BookBench.print("two cooks on one picture, page and browser cache cold, ms", two);
    }

    private static double drawnMs(Browsers browsers, String address) throws InterruptedException {
        try (BrowserContext context = browsers.context(1280, 800, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.addInitScript(WATCH);
            page.navigate(address);
            while (page.evaluate("window.drawnMs ?? null") == null) {
                Thread.sleep(10);
            }
            return ((Number) page.evaluate("window.drawnMs")).doubleValue();
        }
    }
}
