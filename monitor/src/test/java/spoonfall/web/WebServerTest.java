package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.KeptJournal;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;

final class WebServerTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private final HandProbe probe = new HandProbe();
    private final KitchenPlan plan =
            KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
    private final Kitchen kitchen = new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    private final WebServer server = new WebServer(kitchen, "127.0.0.1", 0);
    private final HttpClient client = HttpClient.newHttpClient();

    WebServerTest() {
        kitchen.start();
        server.start();
    }

    @AfterEach
    void stop() {
        server.close();
        kitchen.close();
    }

    /** A probe that says what the test says. */
    private static final class HandProbe implements Probe {
        private volatile @Nullable ProbeListener listener;

        @Override
        public String name() {
            return "pan";
        }

        @Override
        public String place() {
            return "the test";
        }

        @Override
        public void start(ProbeListener newListener) {
            listener = newListener;
        }

        @Override
        public void close() {
            listener = null;
        }

        void say(double temperatureC) {
            ProbeListener hears = listener;
            if (hears != null) {
                hears.reading(Reading.good("pan", System.nanoTime(), temperatureC, "" + temperatureC));
            }
        }

        void lose() {
            ProbeListener hears = listener;
            if (hears != null) {
                hears.lost("pan", "the test was unplugged", System.nanoTime());
            }
        }
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private JsonNode json(String path) {
        try {
            return MAPPER.readTree(send(request(path)).body());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static final class Page implements WebSocket.Listener {
        private final List<JsonNode> messages = new CopyOnWriteArrayList<>();
        private final StringBuilder part = new StringBuilder();
        private volatile int closedWith;

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
        public @Nullable CompletionStage<?> onClose(WebSocket socket, int code, String reason) {
            closedWith = code;
            return null;
        }
    }

    private WebSocket join(Page page) {
        return client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + server.port() + "/live"), page)
                .join();
    }

    @Test
    void thePage_isServedWithAPolicyThatAllowsNothingFromElsewhere() {
        HttpResponse<String> page = send(request("/"));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("<title>Spoonfall</title>")
                .doesNotContain("style=", "onclick", "http://", "https://");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'", "script-src 'self'")
                .doesNotContain("unsafe");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void theChartLibrary_isServedFromHere() {
        assertThat(send(request("/webjars/uplot/1.6.30/dist/uPlot.esm.js")).statusCode())
                .isEqualTo(200);
    }

    @Test
    void aStateBeforeTheFirstReading_saysWhatItWaitsFor() {
        JsonNode state = json("/api/state");
        assertThat(state.path("kitchen").path("name").asText()).isEqualTo("Hollin Bank");
        assertThat(state.path("status").path("stage").asText()).isEqualTo("waiting");
        assertThat(state.path("status").path("temperatureC").isNull()).isTrue();
        assertThat(state.path("probe").path("state").asText()).isEqualTo("waiting");
    }

    @Test
    void aPage_getsTheSnapshotThenEveryChangeByNumber() {
        Page page = new Page();
        join(page);
        Hearing.await("the snapshot", () -> !page.messages.isEmpty());
        probe.say(80);
        probe.lose();
        Hearing.await(
                "the loss",
                () -> page.messages.stream()
                        .anyMatch(m -> m.path("probe").path("state").asText().equals("lost")
                                && m.path("type").asText().equals("probe")));
        assertThat(page.messages.get(0).path("type").asText()).isEqualTo("snapshot");
        long seq = page.messages.get(0).path("seq").asLong();
        for (JsonNode message : page.messages.subList(1, page.messages.size())) {
            String type = message.path("type").asText();
            if (type.equals("status")) {
                assertThat(message.path("seq").asLong()).isEqualTo(seq);
            } else if (!type.equals("jars")) {
                assertThat(message.path("seq").asLong()).isEqualTo(++seq);
            }
        }
    }

    @Test
    void aLostProbe_isNeverShownAsLive() {
        probe.say(80);
        Hearing.await(
                "the reading",
                () -> json("/api/state").path("status").path("fresh").asBoolean());
        probe.lose();
        Hearing.await(
                "the loss",
                () -> json("/api/state").path("probe").path("state").asText().equals("lost"));
        JsonNode status = json("/api/state").path("status");
        assertThat(status.path("fresh").asBoolean()).isFalse();
        assertThat(status.path("temperatureC").isNull()).isTrue();
        assertThat(status.path("seenC").asDouble()).isEqualTo(80);
        assertThat(status.path("say").path("state").asText()).startsWith("No word from the probe");
        assertThat(status.path("say").path("note").asText()).isEqualTo("the test was unplugged");
    }

    /** From then on its pace is known, and a silence of five seconds is one. */
    private void saysThrice() {
        for (int i = 0; i < 3; i++) {
            probe.say(80);
        }
    }

    @Test
    void anAlarm_isAcknowledgedOnceForEveryPage() {
        Page page = new Page();
        join(page);
        saysThrice();
        Hearing.await("the silence", () -> json("/api/state").path("alarms").size() == 1);
        String path = "/api/alarms/probe-silent-1/acknowledge";
        assertThat(send(request(path).POST(HttpRequest.BodyPublishers.noBody())).statusCode())
                .isEqualTo(200);
        assertThat(send(request(path).POST(HttpRequest.BodyPublishers.noBody())).statusCode())
                .isEqualTo(200);
        Hearing.await(
                "word of it",
                () -> page.messages.stream()
                        .anyMatch(m -> m.path("change").asText().equals("acknowledged")));
        assertThat(page.messages.stream().filter(m -> m.path("change").asText().equals("acknowledged")))
                .hasSize(1);
        HttpResponse<String> unknown =
                send(request("/api/alarms/none-7/acknowledge").POST(HttpRequest.BodyPublishers.noBody()));
        assertThat(unknown.statusCode()).isEqualTo(404);
        assertThat(unknown.body()).contains("\"error\"");
    }

    private HttpResponse<String> post(String path, String body) {
        return send(request(path).POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    @Test
    void anAlarm_isPutAsideAndTakenBackForEveryPage() {
        Page page = new Page();
        join(page);
        saysThrice();
        Hearing.await("the silence", () -> json("/api/state").path("alarms").size() == 1);
        String path = "/api/alarms/probe-silent-1/";
        assertThat(post(path + "shelve", "{\"minutes\": 10}").statusCode()).isEqualTo(200);
        JsonNode aside = json("/api/state").path("alarms").path(0);
        assertThat(aside.path("state").asText()).isEqualTo("shelved");
        double now = json("/api/state").path("status").path("t").asDouble();
        assertThat(aside.path("shelvedUntilT").asDouble()).isBetween(now + 590, now + 601);
        assertThat(post(path + "unshelve", "").statusCode()).isEqualTo(200);
        assertThat(post(path + "unshelve", "").statusCode()).isEqualTo(200);
        JsonNode back = json("/api/state").path("alarms").path(0);
        assertThat(back.path("state").asText()).isEqualTo("unacknowledged");
        assertThat(back.path("shelvedUntilT").isNull()).isTrue();
        Hearing.await(
                "word of it",
                () -> page.messages.stream()
                        .anyMatch(m -> m.path("change").asText().equals("unshelved")));
        assertThat(page.messages.stream().map(m -> m.path("change").asText()).filter(change -> !change.isEmpty()))
                .containsExactly("raised", "shelved", "unshelved");
    }

    /** One silence for all of them: it takes five seconds to come. */
    @Test
    void puttingAside_forNoTimeOrTooLong_isRefusedWithTheWayOut() {
        saysThrice();
        Hearing.await("the silence", () -> json("/api/state").path("alarms").size() == 1);
        for (String body : List.of(
                "",
                "{}",
                "[]",
                "10",
                "{\"minutes\": 0}",
                "{\"minutes\": 31}",
                "{\"minutes\": 2.5}",
                "{\"minutes\": \"10\"}",
                "{\"minutes\": 99999999999}",
                "{\"minutes\": 5, \"why\": \"busy\"}")) {
            HttpResponse<String> refused = post("/api/alarms/probe-silent-1/shelve", body);
            assertThat(refused.statusCode()).as(body).isEqualTo(400);
            assertThat(refused.body()).contains("\"error\"").contains("minutes");
        }
        assertThat(json("/api/state").path("alarms").path(0).path("state").asText())
                .isEqualTo("unacknowledged");
    }

    @Test
    void puttingAside_whatThereIsNot_isNotFound() {
        assertThat(post("/api/alarms/stalled-1/shelve", "{\"minutes\": 5}").statusCode())
                .isEqualTo(404);
        assertThat(post("/api/alarms/stalled-1/unshelve", "").statusCode()).isEqualTo(404);
    }

    @Test
    void aNewCook_startsEveryPageAfresh() {
        Page page = new Page();
        join(page);
        probe.say(80);
        HttpResponse<String> begun = send(request("/api/cook").POST(HttpRequest.BodyPublishers.noBody()));
        assertThat(begun.statusCode()).isEqualTo(201);
        Hearing.await(
                "a second snapshot",
                () -> page.messages.stream()
                        .anyMatch(m -> m.path("cook").path("number").asInt() == 2));
    }

    @Test
    void aNewCook_isBegunOnceForATap() {
        for (String tap : new String[] {"after-1", "after-1", "after-1", "after-2"}) {
            assertThat(post("/api/cook", "{\"tap\": \"" + tap + "\"}").statusCode())
                    .isEqualTo(201);
        }
        assertThat(json("/api/state").path("cook").path("number").asInt()).isEqualTo(3);
        assertThat(post("/api/cook", "{\"tip\": \"after-3\"}").statusCode()).isEqualTo(400);
    }

    @Test
    void whatNobodyWaitedFor_isNotDoneLater_andTheLogSaysWhereItFailed() {
        List<LogRecord> logged = new CopyOnWriteArrayList<>();
        Handler listener = new Handler() {
            @Override
            public void publish(LogRecord record) {
                logged.add(record);
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        Logger log = Logger.getLogger(WebServer.class.getName());
        log.addHandler(listener);
        CompletableFuture<Void> busy = new CompletableFuture<>();
        try {
            kitchen.withState(state -> busy.join());
            assertThat(post("/api/cook", "").statusCode()).isEqualTo(503);
        } finally {
            busy.complete(null);
            log.removeHandler(listener);
        }
        assertThat(json("/api/state").path("cook").path("number").asInt()).isOne();
        assertThat(logged)
                .singleElement()
                .satisfies(record -> assertThat(record.getThrown()).hasMessageContaining("did not answer"));
    }

    @Test
    void theTrace_isCsvWithItsMetadata() {
        probe.say(80.25);
        Hearing.await(
                "the reading", () -> send(request("/api/trace")).body().lines().count() == 2);
        assertThat(send(request("/api/trace")).body()).isEqualTo("elapsed_s,temperature_c\r\n0,80.25\r\n");
        assertThat(json("/api/trace?metadata").path("@context").asText()).isEqualTo("http://www.w3.org/ns/csvw");
    }

    @Test
    void health_saysUpAndDown() {
        assertThat(json("/healthz").path("status").asText()).isEqualTo("up");
        kitchen.close();
        HttpResponse<String> down = send(request("/healthz"));
        assertThat(down.statusCode()).isEqualTo(503);
        assertThat(down.body()).contains("restart Spoonfall");
    }

    @Test
    void health_isDown_whenNothingIsWrittenDownAnyMore() {
        KeptJournal journal = new KeptJournal();
        try (Kitchen written =
                        new Kitchen(plan, clock -> List.of(probe), System::nanoTime, Thermometry.none(), journal);
                WebServer other = new WebServer(written, "127.0.0.1", 0)) {
            written.start();
            other.start();
            HttpRequest.Builder request =
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + other.port() + "/healthz"));
            assertThat(send(request).statusCode()).isEqualTo(200);
            journal.healthy = false;
            HttpResponse<String> down = send(request);
            assertThat(down.statusCode()).isEqualTo(503);
            assertThat(down.body()).contains("the recorder has stopped");
        }
    }

    @Test
    void metrics_countReadingsAlarmsAndPages() {
        probe.say(80);
        Hearing.await(
                "the count",
                () -> send(request("/metrics"))
                        .body()
                        .contains("spoonfall_readings_total{pan=\"pan\",probe=\"pan\",quality=\"good\"} 1.0"));
        assertThat(send(request("/metrics")).body())
                .contains(
                        "spoonfall_gaps_total",
                        "spoonfall_readings_dropped_total",
                        "spoonfall_rate_celsius_per_minute",
                        "spoonfall_alarms_raised_total{alarm=\"stalled\",pan=\"pan\"} 0.0",
                        "spoonfall_wire_to_page_seconds");
    }

    @Test
    void aPageThatTalks_isSentAway() {
        Page page = new Page();
        WebSocket socket = join(page);
        socket.sendText("{\"type\":\"acknowledge\"}", true).join();
        Hearing.await("the close", () -> page.closedWith != 0);
        assertThat(page.closedWith).isEqualTo(1008);
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "null", "http://127.0.0.1", "http://localhost:1"})
    void aPageFromElsewhere_changesNothingAndHearsNothing(String origin) {
        HttpResponse<String> post =
                send(request("/api/cook").header("Origin", origin).POST(HttpRequest.BodyPublishers.noBody()));
        assertThat(post.statusCode()).isEqualTo(403);
        assertThat(handshake("127.0.0.1:" + server.port(), origin)).startsWith("HTTP/1.1 403");
    }

    @Test
    void anotherHostsName_isTurnedAway() {
        assertThat(handshake("evil.example:" + server.port(), "http://evil.example:" + server.port()))
                .startsWith("HTTP/1.1 403");
        assertThat(handshake("127.0.0.1:" + server.port(), "http://127.0.0.1:" + server.port()))
                .startsWith("HTTP/1.1 101");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/../pom.xml", "/%2e%2e/%2e%2e/etc/passwd", "/webjars/../../etc/passwd", "/..%5c..%5cetc/passwd"
            })
    void nothingOutsideThePage_isServed(String path) throws IOException {
        String answer =
                raw("GET " + path + " HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 4").doesNotContain("root:", "<project");
    }

    @Test
    void aPageThatNeverReads_isCutOffAndSlowsNobody() throws IOException {
        try (Socket deaf = new Socket()) {
            deaf.setReceiveBufferSize(4096);
            deaf.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
            deaf.getOutputStream()
                    .write(handshakeRequest("127.0.0.1:" + server.port(), "http://127.0.0.1:" + server.port())
                            .getBytes(StandardCharsets.US_ASCII));
            Hearing.await("its joining", () -> metrics().contains("spoonfall_pages 1.0"));
            Page other = new Page();
            join(other);
            // Snapshots fill the line to the page that does not read, and then its queue.
            Hearing.await("its being cut off", () -> {
                for (int i = 0; i < 50; i++) {
                    send(request("/api/cook").POST(HttpRequest.BodyPublishers.noBody()));
                }
                return metrics().contains("spoonfall_live_cut_total 1.0");
            });
            probe.say(99.5);
            Hearing.await(
                    "the other page's reading",
                    () -> other.messages
                                    .get(other.messages.size() - 1)
                                    .path("seenC")
                                    .asDouble()
                            == 99.5);
            assertThat(kitchen.counts().dropped()).isZero();
        }
    }

    private String metrics() {
        return send(request("/metrics")).body();
    }

    private static String handshakeRequest(String host, String origin) {
        return "GET /live HTTP/1.1\r\nHost: " + host + "\r\nOrigin: " + origin
                + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\n"
                + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n";
    }

    private String handshake(String host, String origin) {
        try {
            return raw(handshakeRequest(host, origin));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Sends bytes as they are and returns the first of the answer. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(5000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            byte[] answer = new byte[2000];
            int count = socket.getInputStream().read(answer);
            return new String(answer, 0, Math.max(0, count), StandardCharsets.US_ASCII);
        }
    }
}
