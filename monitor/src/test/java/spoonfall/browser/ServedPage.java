package spoonfall.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.web.WebServer;

/** One browser for a class of tests, and the kitchen that each of them serves; what a test opened is closed after it. */
final class ServedPage implements BeforeAllCallback, AfterAllCallback, AfterEachCallback {
    private final List<BrowserContext> contexts = new ArrayList<>();
    private @Nullable Browsers browsers;
    private @Nullable Kitchens kitchens;
    private @Nullable WebServer server;

    @Override
    public void beforeAll(ExtensionContext context) {
        browsers = Browsers.open();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        browsers().close();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        contexts.forEach(BrowserContext::close);
        contexts.clear();
        stop();
    }

    void serve(Kitchen kitchen) {
        serve(Kitchens.one(kitchen));
    }

    void serve(Kitchens newKitchens) {
        serve(newKitchens, 0);
    }

    /** Serves it at that port of this machine, 0 for one that is free. */
    void serve(Kitchens newKitchens, int port) {
        kitchens = newKitchens;
        server = new WebServer(newKitchens, "127.0.0.1", port);
        newKitchens.start();
        server.start();
    }

    /** Serves nothing any more, as when the program has ended. */
    void stop() {
        if (server != null) {
            server.close();
            server = null;
        }
        if (kitchens != null) {
            kitchens.close();
            kitchens = null;
        }
    }

    int port() {
        if (server == null) {
            throw new IllegalStateException("nothing is served");
        }
        return server.port();
    }

    String address() {
        return "http://localhost:" + port() + "/";
    }

    private Browsers browsers() {
        if (browsers == null) {
            throw new IllegalStateException("no browser is open; the extension must be a static field");
        }
        return browsers;
    }

    /** A browser of its own, of that size and scheme. */
    BrowserContext context(int width, int height, ColorScheme scheme) {
        return kept(browsers().context(width, height, scheme));
    }

    /** The same on a screen for fingers. */
    BrowserContext touchContext(int width, int height, ColorScheme scheme) {
        return kept(browsers().touchContext(width, height, scheme));
    }

    private BrowserContext kept(BrowserContext context) {
        contexts.add(context);
        return context;
    }

    /** What is served, in a browser of its own. */
    Page page(int width, int height, ColorScheme scheme) {
        return page(width, height, scheme, "");
    }

    /** The same at one of its views. */
    Page page(int width, int height, ColorScheme scheme, String view) {
        return Browsers.open(context(width, height, scheme), address() + view);
    }
}
