package spoonfall.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Chromium, driven by as little of its DevTools protocol as there can be: whoever listens to each of its requests, as test drivers do, is
 * timed with it.
 */
final class BareBrowser implements AutoCloseable {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<JsonNode> answers = new ArrayBlockingQueue<>(100);
    private int asked;

    private BareBrowser(Process process, URI address) {
        this.process = process;
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, new Ear())
                .join();
    }

    /** Starts one with nothing in its cache; the temporary folder of its profile is left to the system. */
    static BareBrowser open() throws IOException, InterruptedException {
        Path profile = Files.createTempDirectory("spoonfall-browser");
        Process process = new ProcessBuilder(List.of(
                        "chromium",
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--window-size=1280,800",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank"))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        Path said = profile.resolve("DevToolsActivePort");
        while (!Files.exists(said) || Files.readAllLines(said).size() < 2) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        List<String> lines = Files.readAllLines(said);
        return new BareBrowser(process, URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1)));
    }

    /**
     * Opens an address in a page with a cache of its own.
     *
     * @param before a script that runs before those of the page, and puts a number into {@code window.drawnMs} in the end
     * @return that number
     */
    double opened(String address, String before) throws InterruptedException {
        String context = ask("", "Target.createBrowserContext", MAPPER.createObjectNode())
                .path("browserContextId")
                .asText();
        String target = ask(
                        "",
                        "Target.createTarget",
                        MAPPER.createObjectNode().put("url", "about:blank").put("browserContextId", context))
                .path("targetId")
                .asText();
        String session = ask(
                        "",
                        "Target.attachToTarget",
                        MAPPER.createObjectNode().put("targetId", target).put("flatten", true))
                .path("sessionId")
                .asText();
        ask(session, "Page.enable", MAPPER.createObjectNode());
        ask(
                session,
                "Page.addScriptToEvaluateOnNewDocument",
                MAPPER.createObjectNode().put("source", before));
        ask(session, "Page.navigate", MAPPER.createObjectNode().put("url", address));
        JsonNode drawnMs = MAPPER.missingNode();
        while (!drawnMs.isNumber()) {
            TimeUnit.MILLISECONDS.sleep(100);
            drawnMs = ask(session, "Runtime.evaluate", MAPPER.createObjectNode().put("expression", "window.drawnMs"))
                    .path("result")
                    .path("value");
        }
        ask("", "Target.disposeBrowserContext", MAPPER.createObjectNode().put("browserContextId", context));
        return drawnMs.asDouble();
    }

    private JsonNode ask(String session, String method, ObjectNode params) throws InterruptedException {
        ObjectNode question = MAPPER.createObjectNode().put("id", ++asked).put("method", method);
        question.set("params", params);
        if (!session.isEmpty()) {
            question.put("sessionId", session);
        }
        socket.sendText(question.toString(), true).join();
        while (true) {
            JsonNode answer = answers.poll(30, TimeUnit.SECONDS);
            if (answer == null || answer.has("error")) {
                throw new IllegalStateException(method + " was answered by " + answer);
            }
            if (answer.path("id").asInt() == asked) {
                return answer.path("result");
            }
        }
    }

    @Override
    public void close() {
        socket.abort();
        ServedKitchen.end(process);
    }

    /** Hands over what is an answer, and forgets what merely happened. */
    private final class Ear implements WebSocket.Listener {
        private final StringBuilder part = new StringBuilder();

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket from, CharSequence data, boolean whole) {
            part.append(data);
            if (whole) {
                try {
                    JsonNode heard = MAPPER.readTree(part.toString());
                    if (heard.has("id")) {
                        answers.add(heard);
                    }
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
                part.setLength(0);
            }
            from.request(1);
            return null;
        }
    }
}
