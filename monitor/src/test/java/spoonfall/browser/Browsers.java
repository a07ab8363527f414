package spoonfall.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
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

    private final Playwright playwright;
    private final Browser browser;

    private Browsers(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    static Browsers open() {
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
