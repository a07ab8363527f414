package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.util.List;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;
import spoonfall.probe.Reading;

/** Jars over HTTP and the live channel, in a kitchen whose clock the test sets forward. */
final class JarRoutesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String MARMALADE = "\"elevation\":\"1240m\",\"jar\":\"half-pint\",\"sterilised\":\"no\","
            + "\"canner\":\"boiling-water\",\"headspace\":\"1/4in\"";
    private static final long START_NANOS = 1_000_000_000L;

    private final AtomicLong nanos = new AtomicLong(START_NANOS);
    private final HttpClient client = HttpClient.newHttpClient();
    private final Caller caller = new Caller();
    private @Nullable Kitchens kitchens;
    private @Nullable WebServer server;
    private int taps;

    @BeforeEach
    void serve() {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        Kitchen started = new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), nanos::get);
        kitchens = Kitchens.one(started);
        server = new WebServer(kitchens, "127.0.0.1", 0);
        kitchens.start();
        server.start();
    }

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
        if (kitchens != null) {
            kitchens.close();
        }
    }

    private int port() {
        if (server == null) {
            throw new IllegalStateException("nothing is served");
        }
        return server.port();
    }

    private HttpResponse<String> send(String method, String path, String body) {
        return caller.send(port(), method, path, body);
    }

    private static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private JsonNode done(String path, String body) {
        HttpResponse<String> response = send("POST", path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        return json(response.body());
    }

    private String refused(String path, String body) {
        HttpResponse<String> response = send("POST", path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
        String error = json(response.body()).path("error").asText();
        assertThat(error).isNotBlank().doesNotContain("\n", "Exception");
        return error;
    }

    private JsonNode jars() {
        return json(send("GET", "/api/jars", "").body());
    }

    private String phase() {
        return jars().path("phase").asText();
    }

    private JsonNode load(int jars) {
        taps++;
        return done("/api/jars", "{" + MARMALADE + ",\"jars\":" + jars + ",\"tap\":\"load-" + taps + "\"}");
    }

    private JsonNode tap(String does) {
        taps++;
        return done("/api/jars/tap", "{\"tap\":\"tap-" + taps + "\",\"does\":\"" + does + "\"}");
    }

    private void passes(double seconds) {
        nanos.addAndGet((long) (seconds * 1e9));
    }

    private void cannerSays(double temperatureC, int seconds) {
        if (kitchens == null) {
            throw new IllegalStateException("no kitchen");
        }
        for (int i = 0; i < seconds; i++) {
            passes(1);
            kitchens.jars().reading(Reading.good("canner", nanos.get(), temperatureC, ""));
        }
    }

    @Test
    void theTime_isSaidWithReasonsAndSources() {
        JsonNode time = done("/api/jars/time", "{" + MARMALADE + "}");
        assertThat(time.path("minutes").asInt()).isEqualTo(10);
        assertThat(time.path("steriliseMinutes").asInt()).isEqualTo(14);
        assertThat(time.path("reasons").get(0).asText()).contains("1,001 to 6,000 ft");
        assertThat(time.path("sources").size()).isEqualTo(3);
    }

    @Test
    void aLoad_goesToTheShelfAndItsSealsAreSaid_byTapsOfWhichEachCountsOnce() {
        assertThat(phase()).isEqualTo("empty");
        load(2);
        tap("boils");
        String twice = "{\"tap\":\"tap-" + taps + "\",\"does\":\"boils\"}";
        passes(300);
        assertThat(done("/api/jars/tap", twice).path("remainingS").asDouble()).isEqualTo(300);
        assertThat(refused("/api/jars/tap", "{\"tap\":\"x\",\"does\":\"heat-off\"}"))
                .contains("5 minutes are left");
        passes(300);
        Hearing.await("the end", () -> phase().equals("heat-off"));
        JsonNode alarm = jars().path("alarms").get(0);
        assertThat(alarm.path("id").asText()).isEqualTo("jars-processed-1");
        assertThat(done("/api/jars/alarms/jars-processed-1/acknowledge", "")
                        .path("alarm")
                        .path("state")
                        .asText())
                .isEqualTo("acknowledged");
        tap("heat-off");
        passes(300);
        Hearing.await("the rest", () -> phase().equals("lift-out"));
        tap("lifted");
        assertThat(refused("/api/jars/loads/1/seal", "{\"tap\":\"y\",\"jar\":1,\"sealed\":\"yes\"}"))
                .contains("leave the jars alone");
        passes(12 * 3600);
        done("/api/jars/loads/1/seal", "{\"tap\":\"s1\",\"jar\":1,\"sealed\":\"yes\"}");
        JsonNode shelf = done("/api/jars/loads/1/seal", "{\"tap\":\"s2\",\"jar\":2,\"sealed\":\"no\"}")
                .path("shelf")
                .get(0);
        assertThat(shelf.path("phase").asText()).isEqualTo("done");
        assertThat(shelf.path("text").asText()).startsWith("Jar 2 did not seal.");
        long mark = jars().path("undo").asLong();
        assertThat(done("/api/jars/undo", "{\"mark\":" + mark + "}")
                        .path("shelf")
                        .get(0)
                        .path("seals")
                        .get(1)
                        .asText())
                .isEqualTo("unknown");
        assertThat(done("/api/jars/loads/1/away", "{\"tap\":\"z\"}")
                        .path("shelf")
                        .size())
                .isZero();
    }

    @Test
    void theCannersThermometer_verifiesTheBoilAndALostOneCallsEveryPage() {
        Live live = new Live();
        client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + port() + "/live"), live)
                .join();
        load(6);
        cannerSays(95.8, 40);
        Hearing.await("the boil", () -> phase().equals("processing"));
        cannerSays(90, 15);
        Hearing.await(
                "the call",
                () -> live.heard.stream()
                        .anyMatch(message -> message.path("type").asText().equals("jars")
                                && message.path("alarms")
                                        .path(0)
                                        .path("id")
                                        .asText()
                                        .equals("jars-boil-lost-1")));
        assertThat(jars().path("say").path("act").asText())
                .isEqualTo("Bring it back: the whole 10 minutes start again.");
        assertThat(refused("/api/jars/tap", "{\"tap\":\"q\",\"does\":\"boils\"}"))
                .contains("shows 90.0 °C (194.0 °F)");
    }

    @Test
    void aPageOpenedLate_hearsHowTheJarsStand() {
        load(6);
        tap("boils");
        Live late = new Live();
        client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + port() + "/live"), late)
                .join();
        Hearing.await(
                "the jars",
                () -> late.heard.stream()
                        .anyMatch(message -> message.path("phase").asText().equals("processing")));
        assertThat(late.heard.get(0).path("type").asText()).isEqualTo("snapshot");
        assertThat(late.heard.get(0).path("basis").path("elevationM").asDouble())
                .isEqualTo(1240);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/api/jars/time|{}|say the kitchen's elevation",
                "/api/jars/time|{\"elevation\":\"1240\"}|needs a unit",
                "/api/jars/time|{\"elevation\":7}|must be a text",
                "/api/jars/time|{\"size\":\"big\"}|\"size\" is not known here",
                "/api/jars/time|{|that is no JSON",
                "/api/jars|{}|say the kitchen's elevation",
                "/api/jars/tap|{\"tap\":\"a\",\"does\":\"dance\"}|unknown tap \"dance\"; it can be boils",
                "/api/jars/tap|{\"does\":\"boils\"}|\"tap\" is needed",
                "/api/jars/tap|{\"tap\":\"a\",\"does\":\"boils\"}|no jars are in the canner",
                "/api/jars/loads/1/seal|{\"tap\":\"a\",\"jar\":1,\"sealed\":\"yes\"}|no load 1 is cooling",
                "/api/jars/loads/one/seal|{\"tap\":\"a\",\"jar\":1,\"sealed\":\"yes\"}|a load is a whole number",
                "/api/jars/loads/1/seal|{\"tap\":\"a\",\"jar\":1,\"sealed\":true}|\"sealed\" must be a text",
                "/api/jars/loads/1/seal|{\"tap\":\"a\",\"jar\":1,\"sealed\":\"maybe\"}|yes, no or unknown",
                "/api/jars/undo|{}|\"mark\" is needed"
            })
    void nonsense_isRefusedInOneLine(String path, String body, String message) {
        assertThat(refused(path, body)).contains(message);
    }

    @Test
    void whatIsNotPublished_isRefusedWithWhomToAsk_andNothingIsLoaded() {
        String other = "{" + MARMALADE + ",\"food\":\"other\",\"jars\":3,\"tap\":\"a\"}";
        assertThat(refused("/api/jars", other)).contains("for no other food", "food-safety authority");
        assertThat(refused("/api/jars", "{" + MARMALADE + ",\"jars\":0,\"tap\":\"a\"}"))
                .contains("a canner holds 1 to 48 jars");
        assertThat(refused("/api/jars", "{" + MARMALADE + ",\"tap\":\"a\"}")).contains("\"jars\" is needed");
        assertThat(phase()).isEqualTo("empty");
        assertThat(send("POST", "/api/jars/alarms/jars-boil-lost-9/acknowledge", "")
                        .statusCode())
                .isEqualTo(404);
    }

    /** A page on the live channel. */
    private static final class Live implements WebSocket.Listener {
        private final List<JsonNode> heard = new CopyOnWriteArrayList<>();
        private final StringBuilder text = new StringBuilder();

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                heard.add(json(text.toString()));
                text.setLength(0);
            }
            socket.request(1);
            return null;
        }
    }
}
