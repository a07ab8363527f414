package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;

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

    /** Whoever finds the queue at the door full is unheard, and the system counts that; others on the machine may overflow theirs. */
    @Test
    void hundredsThatComeAtOnce_areAllHeardAtOnce() throws IOException {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", CookSettings.defaults(), 1);
        try (Kitchen kitchen = new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime);
                WebServer server = new WebServer(kitchen, "127.0.0.1", 0)) {
            server.start();
            long unheard = 1;
            for (int tries = 0; tries < 3 && unheard > 0; tries++) {
                unheard = unheardOf(600, server.port());
            }
            assertThat(unheard).isZero();
        }
    }

    private static long unheardOf(int count, int port) throws IOException {
        long before = overflows();
        List<SocketChannel> comers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SocketChannel comer = SocketChannel.open();
            comers.add(comer);
            comer.configureBlocking(false);
            comer.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        }
        for (SocketChannel comer : comers) {
            Hearing.await("its turn", () -> finished(comer));
            comer.close();
        }
        return overflows() - before;
    }

    private static boolean finished(SocketChannel comer) {
        try {
            return comer.finishConnect();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How often this machine had no room for a connection that came: {@code nstat TcpExtListenOverflows}. */
    private static long overflows() throws IOException {
        List<String> lines;
        try (Stream<String> all = Files.lines(Path.of("/proc/net/netstat"))) {
            lines = all.filter(line -> line.startsWith("TcpExt:")).toList();
        }
        List<String> names = List.of(lines.get(0).split(" ", -1));
        return Long.parseLong(lines.get(1).split(" ", -1)[names.indexOf("ListenOverflows")]);
    }
}
