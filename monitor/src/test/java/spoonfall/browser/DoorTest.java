package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.web.ServedDoor;

/** A phone is let in over TLS to look, then to cook, and is shut out again. */
final class DoorTest {
    @TempDir
    private Path folder;

    private static Locator part(Page page, String name) {
        return page.getByTestId(name);
    }

    @Test
    void aPhone_pairsAsViewer_thenAsCook_andIsShutOut() {
        try (ServedDoor door = ServedDoor.secure(folder);
                Browsers browsers = Browsers.open();
                BrowserContext kitchen = browsers.context(1180, 820, ColorScheme.DARK);
                BrowserContext hall = phone(browsers)) {
            Page own = Browsers.open(kitchen, door.here() + "/#devices");
            assertThat(part(own, "door-state")).hasText("No phone or tablet is let in yet.");
            part(own, "door-viewer").click();
            assertThat(own.locator(".qr")).isVisible();
            Browsers.isAccessibleAndFits(own);

            Page phone = Browsers.open(hall, door.outside() + "/");
            assertThat(phone).hasURL(door.outside() + "/pair.html");
            Browsers.isAccessibleAndFits(phone);
            part(phone, "pair-code").fill("AAAA-AAAA");
            part(phone, "pair-name").fill("Hall phone");
            part(phone, "pair-act").click();
            assertThat(part(phone, "pair-answer")).containsText("That code is not right");
            part(phone, "pair-code").fill(part(own, "door-code").textContent());
            part(phone, "pair-act").click();
            assertThat(part(phone, "kitchen")).hasText("Hollin Bank");
            assertThat(part(phone, "looks-on")).isVisible();
            assertThat(part(own, "door-devices")).containsText("Hall phone");
            assertThat(part(own, "door-devices")).containsText("looks on");
            phone.navigate(door.outside() + "/#thermometer");
            assertThat(part(phone, "check-act")).isHidden();
            Browsers.isAccessibleAndFits(phone);

            part(own, "door-cook").click();
            assertThat(part(own, "door-for")).containsText("may cook");
            phone.navigate(
                    door.outside() + "/pair.html#" + part(own, "door-code").textContent());
            assertThat(phone).hasURL(door.outside() + "/pair.html");
            part(phone, "pair-name").fill("Cook's phone");
            part(phone, "pair-act").click();
            assertThat(part(phone, "kitchen")).hasText("Hollin Bank");
            assertThat(part(phone, "looks-on")).isHidden();
            phone.navigate(door.outside() + "/#thermometer");
            assertThat(part(phone, "check-act")).isVisible();
            assertThat(part(own, "door-devices").locator("li")).hasCount(1);
            assertThat(part(own, "door-devices")).containsText("Cook's phone");

            part(own, "device-out").click();
            assertThat(phone).hasURL(Pattern.compile(".*/pair\\.html"));
            assertThat(part(own, "door-state")).hasText("No phone or tablet is let in yet.");
        }
    }

    /** A small screen that takes the certificate, as its owner does after comparing the fingerprint. */
    private static BrowserContext phone(Browsers browsers) {
        return browsers.browser()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(390, 844)
                        .setIgnoreHTTPSErrors(true));
    }
}
