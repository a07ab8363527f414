package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;

/** The page's style sheets come as one. */
final class SheetsTest {
    /** Of pages of their own. */
    private static final List<String> APART = List.of("pair.css", "offline.css");

    @Test
    void allSheets_areInTheOne_whichIsSentOnce() throws Exception {
        CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
        Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "", settings, 1),
                clock -> List.of(new ToldProbe("pan", 0)),
                System::nanoTime);
        try (Kitchens kitchens = Kitchens.one(kitchen);
                WebServer server = new WebServer(kitchens, "127.0.0.1", 0)) {
            server.start();
            HttpRequest.Builder ask =
                    HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + "/all.css"));
            HttpClient client = HttpClient.newHttpClient();
            HttpResponse<String> all = client.send(ask.build(), HttpResponse.BodyHandlers.ofString());
            assertThat(all.headers().firstValue("Content-Type")).hasValue("text/css; charset=utf-8");
            for (String sheet : sheets()) {
                assertThat(all.body()).contains(sheet);
            }
            String tag = all.headers().firstValue("ETag").orElseThrow();
            HttpResponse<String> again =
                    client.send(ask.header("If-None-Match", tag).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(again.statusCode()).isEqualTo(304);
            assertThat(again.body()).isEmpty();
        }
    }

    private static List<String> sheets() throws IOException {
        Path folder = Path.of("../dashboard-static/src/main/resources/dashboard");
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> sheets = files.filter(file -> file.toString().endsWith(".css"))
                    .filter(file -> !APART.contains(file.getFileName().toString()))
                    .toList();
            assertThat(sheets).hasSizeGreaterThan(10);
            return sheets.stream().map(SheetsTest::text).toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
