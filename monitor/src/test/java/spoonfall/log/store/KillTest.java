package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.CookInput;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.file.Database;
import spoonfall.probe.Hearing;
import spoonfall.probe.Quality;
import spoonfall.probe.serial.PseudoTerminal;
import spoonfall.probe.trace.Trace;

/**
 * The real program, killed at random moments of a cook and started again: {@code -Dspoonfall.kills=200} for a long run,
 * {@code -Dspoonfall.seed=N} for the same moments again.
 */
@Timeout(value = 120, unit = TimeUnit.MINUTES)
final class KillTest {
    private static final int KILLS = Integer.getInteger("spoonfall.kills", 20);
    private static final long SEED = Long.getLong("spoonfall.seed", System.nanoTime() & 0xFFFF);
    private static final double SPEED = 20;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Six half-pints, in the canner all the while. */
    private static final String JARS =
            "{\"tap\": \"load-%d\", \"jars\": 6, \"food\": \"marmalade\", \"elevation\": \"1240m\","
                    + " \"jar\": \"half-pint\", \"sterilised\": \"no\", \"canner\": \"boiling-water\", \"headspace\": \"1/4in\"}";

    /** What may be said of the jars after a kill, by what was said before: what boiled is asked, never taken for done. */
    private static final Map<String, List<String>> JARS_GO =
            Map.of("processing", List.of("processing", "unsure"), "unsure", List.of("unsure"));

    /** A reading may be on its way through the page while the one that the record holds is a second old. */
    private static final double MOST_LOST_S = 1 + 0.5;

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    /** What a page was told. */
    private static final class Seen implements WebSocket.Listener {
        final List<JsonNode> events = new CopyOnWriteArrayList<>();
        private final StringBuilder part = new StringBuilder();
        volatile double seenT;
        volatile boolean snapshot;

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean whole) {
            part.append(data);
            if (whole) {
                try {
                    take(MAPPER.readTree(part.toString()));
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
                part.setLength(0);
            }
            socket.request(1);
            return null;
        }

        private void take(JsonNode message) {
            switch (message.path("type").asText()) {
                case "snapshot" -> {
                    events.clear();
                    events.addAll(cookEvents(message));
                    snapshot = true;
                }
                case "status" -> seenT = message.path("seenT").asDouble();
                default -> events.addAll(cookEvent(message));
            }
        }
    }

    /** Events of the cook, without the number of the change, which counts anew in each run. */
    private static List<JsonNode> cookEvents(JsonNode snapshot) {
        List<JsonNode> events = new ArrayList<>();
        snapshot.path("events").forEach(event -> events.addAll(cookEvent(event)));
        return events;
    }

    private static List<JsonNode> cookEvent(JsonNode event) {
        boolean ofTheCook = List.of("alarm", "stage", "reminder", "came-back")
                .contains(event.path("type").asText());
        return ofTheCook ? List.of(((ObjectNode) event.deepCopy()).without("seq")) : List.of();
    }

    private Process serve(Path port, int httpPort) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home", ""), "bin", "java")
                                .toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "spoonfall.cli.Main",
                        "serve",
                        "--probe",
                        "text:" + port,
                        "--elevation",
                        "1240m",
                        "--rise",
                        "4.4C",
                        "--data",
                        folder.resolve("data").toString(),
                        "--port",
                        "" + httpPort,
                        "--speed",
                        "" + (int) SPEED)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        folder.resolve("serve.log").toFile()))
                .start();
    }

    private static JsonNode state(int port) {
        return read(port, "/api/state");
    }

    private static JsonNode read(int port, String path) {
        try (InputStream in =
                URI.create("http://127.0.0.1:" + port + path).toURL().openStream()) {
            return MAPPER.readTree(in);
        } catch (IOException e) {
            return MAPPER.createObjectNode();
        }
    }

    private Seen watch(int port) {
        Seen seen = new Seen();
        client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + port + "/live"), seen)
                .join();
        Hearing.await("the snapshot", () -> seen.snapshot);
        return seen;
    }

    private static Thread cook(Trace trace, PseudoTerminal line) {
        long startNanos = System.nanoTime();
        Thread thread = new Thread(
                () -> {
                    for (int i = 0; i < trace.size(); i++) {
                        long due = startNanos + (long) (trace.elapsedS(i) / SPEED * 1e9);
                        try {
                            TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
                        } catch (InterruptedException e) {
                            return;
                        }
                        line.send(
                                "T1: %.1f C\r\n".formatted(trace.temperatureC(i).orElseThrow()));
                    }
                },
                "thermometer");
        thread.setDaemon(true);
        return thread;
    }

    @Test
    void whateverMomentItIsKilled_theCookGoesOn() throws Exception {
        System.out.println("seed " + SEED + ", " + KILLS + " kills");
        Random random = new Random(SEED);
        List<Scenario> scenarios = List.of(Scenario.STALL, Scenario.CLEAN, Scenario.SCORCH, Scenario.GAP);
        Tally tally = new Tally();
        for (int cook = 0; tally.kills < KILLS; cook++) { // a slow machine is killed in the next cook as well
            int kills = Math.min(KILLS - tally.kills, 20);
            Trace trace = Cooks.trace(scenarios.get(cook % scenarios.size()), 1 + random.nextInt(1000));
            killDuring(trace, kills, cook + 1, random, tally);
        }
        System.out.println(tally);
        assertThat(tally.kills).isEqualTo(KILLS);
    }

    /** What was tried and lost. */
    private static final class Tally {
        int kills;
        int events;
        double mostLostS;
        double mostStartS;

        @Override
        public String toString() {
            return "%d kills, %d events seen before them and none lost, at most %.2f s of readings lost, back within %.1f s"
                    .formatted(kills, events, mostLostS, mostStartS);
        }
    }

    private void killDuring(Trace trace, int kills, int number, Random random, Tally tally) throws Exception {
        int port;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = socket.getLocalPort();
        }
        PseudoTerminal line = PseudoTerminal.open();
        Thread thermometer = cook(trace, line);
        thermometer.start();
        Process server = serve(line.path(), port);
        try {
            awaitLong(
                    "the service",
                    () -> state(port).path("status").path("seenT").asDouble() > 0);
            if (number > 1 && state(port).path("cook").path("number").asInt() < number) {
                post(port, "/api/cook", ""); // the thermometer plays another cook
            }
            long began = 0;
            post(port, "/api/jars", JARS.formatted(number));
            post(port, "/api/jars/tap", "{\"tap\": \"boils-%d\", \"does\": \"boils\"}".formatted(number));
            for (int kill = 1; kill <= kills && thermometer.isAlive(); kill++) {
                Seen seen = watch(port);
                TimeUnit.MILLISECONDS.sleep(200 + random.nextInt(1800));
                String answered = acknowledgeAny(port, random);
                tapAfternoon(port, kill);
                JsonNode before = state(port);
                JsonNode jarsBefore = jars(port);
                List<JsonNode> shown = List.copyOf(seen.events);
                double seenT = seen.seenT;
                server.destroyForcibly().waitFor();
                tally.kills++;
                tally.events = Math.max(tally.events, shown.size());
                tally.mostLostS = Math.max(tally.mostLostS, lostS(seenT));
                began = System.nanoTime();
                server = serve(line.path(), port);
                awaitLong("the service again", () -> state(port).path("cook").has("number"));
                JsonNode after = state(port);
                tally.mostStartS = Math.max(tally.mostStartS, (System.nanoTime() - began) / 1e9);
                compare(before, shown, after, answered);
                System.out.println(tally);
                assertThat(done(after)).as("steps that are over").containsAll(done(before));
                assertThat(jars(port).path("load")).isEqualTo(jarsBefore.path("load"));
                assertThat(jars(port).path("phase").asText())
                        .isIn(JARS_GO.get(jarsBefore.path("phase").asText()));
            }
        } catch (AssertionError e) {
            Files.readAllLines(folder.resolve("serve.log")).forEach(System.out::println);
            throw e;
        } finally {
            server.destroyForcibly().waitFor();
            thermometer.interrupt();
            line.close();
        }
    }

    /** How much was seen but is not in the record, in our own seconds; and the file is whole. */
    private double lostS(double seenT) throws Exception {
        Path file = folder.resolve("data").resolve("cooks.db");
        try (Database database = Database.open(file)) {
            assertThat(database.handle()
                            .createQuery("PRAGMA integrity_check")
                            .mapTo(String.class)
                            .list())
                    .containsExactly("ok");
            CookStore store = new CookStore(database.handle());
            StoredCook cook = store.read(store.latest("pan").orElseThrow()).orElseThrow();
            assertThat(cook.damaged()).isZero();
            double keptT = cook.inputs().stream()
                            .filter(input -> input instanceof CookInput.Heard heard && heard.quality() == Quality.GOOD)
                            .mapToLong(CookInput::takenMillis)
                            .max()
                            .orElse(0)
                    / 1000.0;
            double lostS = (seenT - keptT) / SPEED;
            assertThat(lostS)
                    .as("seen until %.1f, kept until %.1f", seenT, keptT)
                    .isLessThan(MOST_LOST_S);
            return lostS;
        }
    }

    private static void compare(JsonNode before, List<JsonNode> shown, JsonNode after, String answered) {
        assertThat(after.path("cook").path("number"))
                .isEqualTo(before.path("cook").path("number"));
        assertThat(after.path("cook").path("startedAtMs"))
                .isEqualTo(before.path("cook").path("startedAtMs"));
        assertThat(after.path("basis")).isEqualTo(before.path("basis"));
        List<JsonNode> events = cookEvents(after);
        if (!shown.isEmpty()) { // a cook may have begun only just now
            assertThat(events).containsSubsequence(shown);
        }
        assertThat(events.stream()
                        .filter(event -> event.path("type").asText().equals("came-back"))
                        .count())
                .isGreaterThan(shown.stream()
                        .filter(event -> event.path("type").asText().equals("came-back"))
                        .count());
        Map<String, String> states = new HashMap<>();
        for (JsonNode event : events) {
            if (event.has("alarm")) {
                states.put(
                        event.path("alarm").path("alarm").asText(),
                        event.path("alarm").path("state").asText());
            }
        }
        states.values().removeIf(state -> state.equals("normal") || state.equals("suppressed"));
        Map<String, String> standing = new HashMap<>();
        after.path("alarms")
                .forEach(alarm -> standing.put(
                        alarm.path("alarm").asText(), alarm.path("state").asText()));
        assertThat(standing).isEqualTo(states);
        if (!answered.isEmpty()) {
            assertThat(events)
                    .anyMatch(event -> event.path("change").asText().equals("acknowledged")
                            && event.path("alarm").path("id").asText().equals(answered));
        }
    }

    /** A long run is niced, on a machine that others use as well. */
    private static void awaitLong(String what, BooleanSupplier condition) throws InterruptedException {
        long untilNanos = System.nanoTime() + TimeUnit.MINUTES.toNanos(3);
        while (!condition.getAsBoolean()) {
            assertThat(System.nanoTime()).as("waited in vain for: " + what).isLessThan(untilNanos);
            TimeUnit.MILLISECONDS.sleep(5);
        }
    }

    /** Somebody says that a preparation or a step is done, now and then. */
    private void tapAfternoon(int port, int kill) throws Exception {
        JsonNode afternoon = state(port).path("afternoon");
        JsonNode preparations = afternoon.path("preparations");
        if (kill % 4 == 1 && preparations.size() > kill / 4) {
            String id = preparations.path(kill / 4).path("id").asText();
            assertThat(post(port, "/api/afternoon/preparations/" + id + "/done", "{}"))
                    .isEqualTo(200);
        }
    }

    private static List<String> done(JsonNode state) {
        List<String> done = new ArrayList<>();
        for (String kind : List.of("steps", "preparations")) {
            for (JsonNode one : state.path("afternoon").path(kind)) {
                if (one.path("state").asText().equals("done")) {
                    done.add(one.path("id").asText());
                }
            }
        }
        return done;
    }

    private static JsonNode jars(int port) {
        return read(port, "/api/jars");
    }

    /** Half of the time somebody answers a call, just before the end. */
    private String acknowledgeAny(int port, Random random) throws Exception {
        for (JsonNode alarm : state(port).path("alarms")) {
            if (alarm.path("state").asText().equals("unacknowledged") && random.nextBoolean()) {
                String id = alarm.path("id").asText();
                return post(port, "/api/alarms/" + id + "/acknowledge", "") == 200 ? id : "";
            }
        }
        return "";
    }

    private int post(int port, String path, String body) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
    }
}
