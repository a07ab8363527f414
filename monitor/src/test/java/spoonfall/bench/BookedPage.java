package spoonfall.bench;

import java.io.IOException;

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

    private static final String BLANK =
            "requestAnimationFrame(() => requestAnimationFrame(() => { window.drawnMs = performance.now(); }));";

    private BookedPage() {}

    /** Prints how long a cook's picture takes, that of two, and what a page takes on which nothing is. */
    static void print(String address, int cooks, int times) throws IOException, InterruptedException {
        double[] one = new double[times];
        double[] two = new double[times];
        double[] none = new double[times];
        try (BareBrowser browser = BareBrowser.open()) {
            for (int i = 0; i < times; i++) {
                int id = cooks - i * (cooks / times) - 1;
                one[i] = browser.opened(address + "/#book/" + id, WATCH);
                two[i] = browser.opened(address + "/#book/" + id + "/" + (cooks - id), WATCH);
                none[i] = browser.opened(address + "/healthz", BLANK);
            }
        }
        BookBench.print("a cook's picture, nothing in the browser's cache, ms", one);
        BookBench.print("two cooks on one picture, likewise, ms", two);
        BookBench.print("for comparison: a page with one word on it, likewise, ms", none);
    }
}
