package spoonfall.bench;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A page on the live channel that reads as quickly as it can and notes what it was sent. */
final class LoadPage implements WebSocket.Listener {
    private static final Pattern SEEN = Pattern.compile("\"seenC\":([0-9.]+)");

    private final LoadPace pace;
    private final int pan;
    private final StringBuilder part = new StringBuilder();
    private final CompletableFuture<Void> snapshot = new CompletableFuture<>();
    private final AtomicInteger silentCalls = new AtomicInteger();
    private final AtomicInteger breaks = new AtomicInteger();
    private volatile boolean closed;
    private int latest;
    private long seq = -1;

    private LoadPage(LoadPace pace, int pan) {
        this.pace = pace;
        this.pan = pan;
    }

    /** Opens a page on the pan of that number. */
    static CompletableFuture<LoadPage> open(HttpClient client, int port, LoadPace pace, int pan) {
        LoadPage page = new LoadPage(pace, pan);
        String name = URLEncoder.encode(LoadedKitchen.name(pan), StandardCharsets.UTF_8);
        return client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + port + "/live?pan=" + name), page)
                .thenApply(socket -> page);
    }

    int pan() {
        return pan;
    }

    /** Done when it had its snapshot. */
    CompletableFuture<Void> snapshot() {
        return snapshot;
    }

    /** How often it was called because its thermometer is silent. */
    int silentCalls() {
        return silentCalls.get();
    }

    /** How often a change was missing between two that came. */
    int breaks() {
        return breaks.get();
    }

    /** Whether the service or the connection ended it. */
    boolean closed() {
        return closed;
    }

    @Override
    public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean whole) {
        part.append(data);
        if (whole) {
            note(part.toString(), System.nanoTime());
            part.setLength(0);
        }
        socket.request(1);
        return null;
    }

    private void note(String text, long nowNanos) {
        if (text.startsWith("{\"type\":\"status\"")) {
            Matcher seen = SEEN.matcher(text);
            if (seen.find()) {
                int thousandths = (int) Math.round(Double.parseDouble(seen.group(1)) * 1000);
                if (thousandths != latest) {
                    latest = thousandths;
                    pace.arrived(pan, thousandths, nowNanos);
                }
            }
        } else if (text.startsWith("{\"type\":\"snapshot\"")) {
            seq = number(text, "\"seq\":");
            snapshot.complete(null);
        } else if (text.contains("\"seq\":")) {
            long next = number(text, "\"seq\":");
            if (seq >= 0 && next != seq + 1) {
                breaks.incrementAndGet();
            }
            seq = next;
            if (text.contains("\"alarm\":\"probe-silent\"") && text.contains("\"change\":\"raised\"")) {
                silentCalls.incrementAndGet();
            }
        }
    }

    private static long number(String text, String name) {
        int from = text.indexOf(name) + name.length();
        int to = from;
        while (to < text.length() && Character.isDigit(text.charAt(to))) {
            to++;
        }
        return Long.parseLong(text.substring(from, to));
    }

    @Override
    public @Nullable CompletionStage<?> onClose(WebSocket socket, int status, String reason) {
        closed = true;
        return null;
    }

    @Override
    public void onError(WebSocket socket, Throwable error) {
        closed = true;
    }
}
