package spoonfall.bench;

import java.io.IOException;

/** Opens cooks of the book in a browser that has nothing of the page yet, and times until their picture is drawn. */
final class BookedPage {
    /** Notes when the picture that the service drew was there, in milliseconds since the page was asked for. */
    private static final String PICTURE = watch("img", "found.decode()");

    /** Notes when the page's scripts had drawn it again. */
    private static final String CHART = watch("canvas", "Promise.resolve()");

    /** The cooks that the others are copies of had these numbers, and are in the book no longer. */
    private static final int FIRST_IDS = 16;

    private static final String BLANK =
            "requestAnimationFrame(() => requestAnimationFrame(() => { window.drawnMs = performance.now(); }));";

    private BookedPage() {}

    private static String watch(String element, String ready) {
        return """
            new MutationObserver((changes, self) => {
              const found = document.querySelector('[data-testid="book-climb"] %s');
              if (found) {
                self.disconnect();
                %s.then(() => requestAnimationFrame(() => requestAnimationFrame(() => { window.drawnMs = performance.now(); })));
              }
            }).observe(document, { childList: true, subtree: true });
            """.formatted(element, ready);
    }

    /** Prints how long a cook's picture takes, that of two, and what a page takes on which nothing is. */
    static void print(String address, int cooks, int times) throws IOException, InterruptedException {
        double[][] taken = new double[5][times];
        try (BareBrowser browser = BareBrowser.open()) {
            for (int i = 0; i < times; i++) {
                int id = cooks - i * (cooks / times) - 1;
                String one = address + "/#book/" + id;
                String two = one + "/" + (cooks - id + FIRST_IDS);
                taken[0][i] = browser.opened(one, PICTURE);
                taken[1][i] = browser.opened(two, PICTURE);
                taken[2][i] = browser.opened(one, CHART);
                taken[3][i] = browser.opened(two, CHART);
                taken[4][i] = browser.opened(address + "/healthz", BLANK);
            }
        }
        BookBench.print("a cook's picture, nothing in the browser's cache, ms", taken[0]);
        BookBench.print("two cooks on one picture, likewise, ms", taken[1]);
        BookBench.print("a cook's picture drawn again by the page's scripts, likewise, ms", taken[2]);
        BookBench.print("that of two, likewise, ms", taken[3]);
        BookBench.print("for comparison: a page with one word on it, likewise, ms", taken[4]);
    }
}
