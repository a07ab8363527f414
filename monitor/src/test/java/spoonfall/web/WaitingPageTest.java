package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;

/** Pages that come after a restart in the middle of a long cook: all at once, and while their pan is still being gone through. */
@Timeout(60)
final class WaitingPageTest {
    private static final class Page implements WebSocket.Listener {
        private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
        private final StringBuilder part = new StringBuilder();

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            part.append(data);
            if (last) {
                heard.add(part.toString());
                part.setLength(0);
            }
            socket.request(1);
            return null;
        }

        @Override
        public @Nullable CompletionStage<?> onClose(WebSocket socket, int code, String reason) {
            heard.add("let go: " + code + " " + reason);
            return null;
        }

        String next() throws InterruptedException {
            return String.valueOf(heard.poll(20, TimeUnit.SECONDS));
        }
    }

    @Test
    void aPageThatWaitsForItsPan_isKept_andHasItWhenThePanIsThere() throws Exception {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", CookSettings.defaults(), 1);
        ToldProbe probe = new ToldProbe("pan", 0);
        try (Kitchen kitchen = new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
                WebServer server = new WebServer(kitchen, "127.0.0.1", 0)) {
            server.start(); // before the kitchen: its thread answers nobody yet
            Page page = new Page();
            HttpClient.newHttpClient()
                    .newWebSocketBuilder()
                    .buildAsync(URI.create("ws://127.0.0.1:" + server.port() + "/live"), page)
                    .get();
            assertThat(page.next()).isEqualTo("{\"type\":\"waiting\"}");
            assertThat(page.next()).isEqualTo("{\"type\":\"waiting\"}");
            kitchen.start();
            String next = page.next();
            while (next.contains("\"waiting\"}")) { // one may just have been on its way
                next = page.next();
            }
            assertThat(next).startsWith("{\"type\":\"snapshot\"");
        }
    }

    /** Whoever finds the queue at the door full is heard a second later at the earliest. On a busy machine one try may be slow for its own sake. */
    @Test
    void hundredsThatComeAtOnce_areAllHeardAtOnce() throws IOException {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", CookSettings.defaults(), 1);
        try (Kitchen kitchen = new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime);
                WebServer server = new WebServer(kitchen, "127.0.0.1", 0)) {
            server.start();
            long slowestMillis = Long.MAX_VALUE;
            for (int tries = 0; tries < 3 && slowestMillis >= 900; tries++) {
                slowestMillis = slowestOf(600, server.port());
            }
            assertThat(slowestMillis).isLessThan(900);
        }
    }

    private static long slowestOf(int count, int port) throws IOException {
        List<Socket> sockets = new ArrayList<>();
        long slowestNanos = 0;
        for (int i = 0; i < count; i++) {
            long begun = System.nanoTime();
            sockets.add(new Socket(InetAddress.getLoopbackAddress(), port));
            slowestNanos = Math.max(slowestNanos, System.nanoTime() - begun);
        }
        for (Socket socket : sockets) {
            socket.close();
        }
        return TimeUnit.NANOSECONDS.toMillis(slowestNanos);
    }
}
