package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.probe.Hearing;

/** Two pans and a canner behind one service. */
final class PansTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private final ToldProbe big = new ToldProbe("big", 0.02);
    private final ToldProbe small = new ToldProbe("small", 0.02);
    private final ToldProbe inCanner = new ToldProbe("canner", 0);
    private final Kitchens kitchens = new Kitchens(
            List.of(kitchen("big", "Seville orange", big), kitchen("small pan", "Lemon", small)),
            Optional.of(new Canner(clock -> inCanner, System::nanoTime, Thermometry.none())));
    private final WebServer server = new WebServer(kitchens, "127.0.0.1", 0);
    private final HttpClient client = HttpClient.newHttpClient();
    private final Caller caller = new Caller();

    PansTest() {
        kitchens.start();
        server.start();
    }

    @AfterEach
    void stop() {
        server.close();
        kitchens.close();
    }

    private static Kitchen kitchen(String pan, String batch, ToldProbe probe) {
        CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", batch, settings, 1).inPan(pan);
        return new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    }

    private HttpResponse<String> send(String method, String path, String body) {
        return caller.send(server.port(), method, path, body);
    }

    private JsonNode state(String pan) {
        return Caller.json(send("GET", "/api/pans/" + pan + "/state", ""));
    }

    private static final class Page implements WebSocket.Listener {
        private final List<JsonNode> messages = new CopyOnWriteArrayList<>();
        private final StringBuilder part = new StringBuilder();
        private volatile int closedWith;
        private volatile String reason = "";

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            part.append(data);
            if (last) {
                try {
                    messages.add(MAPPER.readTree(part.toString()));
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
                part.setLength(0);
            }
            socket.request(1);
            return null;
        }

        @Override
        public @Nullable CompletionStage<?> onClose(WebSocket socket, int code, String why) {
            closedWith = code;
            reason = why;
            return null;
        }

        /** The pans as this page knows them now. */
        JsonNode pans() {
            Map<String, JsonNode> rows = new LinkedHashMap<>();
            messages.stream()
                    .flatMap(
                            message -> StreamSupport.stream(message.path("pans").spliterator(), false))
                    .forEach(row -> rows.put(row.path("name").asText(), row));
            return JsonNodeFactory.instance.arrayNode().addAll(rows.values());
        }
    }

    private Page join(String query) {
        Page page = new Page();
        client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + server.port() + "/live" + query), page)
                .join();
        return page;
    }

    /** Boils the small pan to its setting point, which calls. */
    private String callOfTheSmallPan() {
        small.say(100.6, 120);
        Hearing.await(
                "a call",
                () -> !Caller.json(send("GET", "/api/pans/small%20pan/state", ""))
                        .path("alarms")
                        .isEmpty());
        return state("small%20pan").path("alarms").get(0).path("id").asText();
    }

    @Test
    void everyCall_isThereForTheFirstPanAndForEachByItsName() {
        assertThat(Caller.json(send("GET", "/api/state", "")).path("pan").asText())
                .isEqualTo("big");
        assertThat(state("big").path("kitchen").path("batch").asText()).isEqualTo("Seville orange");
        assertThat(state("small%20pan").path("pan").asText()).isEqualTo("small pan");
        assertThat(state("small%20pan").path("kitchen").path("batch").asText()).isEqualTo("Lemon");
        assertThat(send("POST", "/api/pans/small%20pan/cook", "").statusCode()).isEqualTo(201);
        assertThat(state("small%20pan").path("cook").path("number").asInt()).isEqualTo(2);
        assertThat(state("big").path("cook").path("number").asInt()).isEqualTo(1);
        assertThat(send("GET", "/api/pans/small%20pan/trace", "").body()).startsWith("elapsed_s,temperature_c");
    }

    @ParameterizedTest
    @CsvSource({
        "GET,/api/pans/middle/state",
        "GET,/api/pans/middle/trace",
        "POST,/api/pans/middle/cook",
        "POST,/api/pans/middle/alarms/stalled-1/acknowledge",
        "DELETE,/api/pans/middle/check"
    })
    void anUnknownPan_isSaidToBeUnknown(String method, String path) {
        HttpResponse<String> answer = send(method, path, "");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(Caller.json(answer).path("error").asText())
                .isEqualTo("no pan is called \"middle\"; there is big, small pan");
    }

    @Test
    void aPage_followsThePanItNames() {
        Page page = join("?pan=small%20pan");
        Page first = join("");
        Hearing.await("the snapshots", () -> !page.messages.isEmpty() && !first.messages.isEmpty());
        assertThat(page.messages.get(0).path("pan").asText()).isEqualTo("small pan");
        assertThat(first.messages.get(0).path("pan").asText()).isEqualTo("big");
        Page lost = join("?pan=middle");
        Hearing.await("its end", () -> lost.closedWith != 0);
        assertThat(lost.closedWith).isEqualTo(4404);
        assertThat(lost.reason).contains("no pan is called \"middle\"");
    }

    @Test
    void aPageOnOnePan_isCalledForTheOther_andAnyPageAnswers() {
        Page page = join("");
        Page other = join("?pan=small%20pan");
        Hearing.await("the snapshots", () -> !page.messages.isEmpty() && !other.messages.isEmpty());
        assertThat(page.pans().findValuesAsText("name")).containsExactly("big", "small pan");
        String id = callOfTheSmallPan();
        Hearing.await("the call", () -> !page.pans().get(1).path("alarms").isEmpty());
        JsonNode call = page.pans().get(1).path("alarms").get(0);
        assertThat(call.path("id").asText()).isEqualTo(id);
        assertThat(call.path("title").asText()).isNotEmpty();
        assertThat(page.pans().get(1).path("state").asText()).isNotEmpty();
        assertThat(page.pans().get(1).path("startedAtMs").isNumber()).isTrue();
        assertThat(page.pans().get(0).path("alarms")).isEmpty();

        Page late = join("");
        Hearing.await("the late page", () -> !late.messages.isEmpty());
        assertThat(late.pans().get(1).path("alarms").get(0).path("id").asText()).isEqualTo(id);

        for (JsonNode alarm : page.pans().get(1).path("alarms")) {
            String path = "/api/pans/small%20pan/alarms/" + alarm.path("id").asText() + "/acknowledge";
            assertThat(send("POST", path, "").statusCode()).isEqualTo(200);
            assertThat(send("POST", path, "").statusCode()).isEqualTo(200);
        }
        for (Page told : List.of(page, other, late)) {
            Hearing.await("the answer", () -> told.pans().get(1).path("alarms").isEmpty());
        }
    }

    @Test
    void theCannersTemperature_isOnEveryPage() {
        Page page = join("");
        inCanner.say(95.94, 2);
        Hearing.await(
                "the canner",
                () -> page.messages.stream()
                        .anyMatch(message ->
                                message.path("canner").path("temperatureC").asDouble() == 95.9));
        assertThat(state("big").path("probes")).hasSize(1);
    }

    @Test
    void whereTheKitchenIs_countsForAllItsPans() {
        assertThat(send("POST", "/api/pans/small%20pan/base", "{\"elevation\": \"0m\"}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(state("big").path("basis").path("waterBoilC").asDouble()).isEqualTo(99.97, Offset.offset(0.05));
    }

    @Test
    void metrics_tellThePansApart() {
        big.say(80, 3);
        Hearing.await(
                "the count",
                () -> send("GET", "/metrics", "")
                        .body()
                        .contains("spoonfall_readings_total{pan=\"big\",probe=\"big\",quality=\"good\"} 3.0"));
        assertThat(send("GET", "/metrics", "").body())
                .contains(
                        "spoonfall_readings_total{pan=\"small pan\",probe=\"small\",quality=\"good\"} 0.0",
                        "spoonfall_temperature_celsius{pan=\"small pan\"}");
    }

    @Test
    void aPanThatNobodyWatchesAnyMore_isSaidToEveryPageAndToTheHealthCheck() {
        Page page = join("");
        Hearing.await("the snapshot", () -> !page.messages.isEmpty());
        kitchens.named("small pan").orElseThrow().close();
        assertThat(send("GET", "/healthz", "").statusCode()).isEqualTo(503);
        big.say(80, 1);
        Hearing.await(
                "the news",
                () -> page.pans().get(1).path("state").asText().equals("Nobody watches it. Restart Spoonfall."));
    }
}
