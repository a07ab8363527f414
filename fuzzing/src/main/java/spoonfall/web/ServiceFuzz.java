package spoonfall.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.fuzz.Cut;
import spoonfall.fuzz.Must;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.hand.HandProbe;

/** The calls and the live channel of a service that runs, spoken to as pages and as others do. */
public final class ServiceFuzz {
    private static final List<String> CALLS = List.of(
            "POST /api/readings",
            "DELETE /api/readings/{}",
            "POST /api/alarms/gel-point/shelve",
            "POST /api/alarms/{}/acknowledge",
            "POST /api/alarms/{}/unshelve",
            "POST /api/check",
            "POST /api/check/keep",
            "POST /api/calibration/undo",
            "POST /api/base",
            "POST /api/test",
            "DELETE /api/test?id={}",
            "POST /api/test/seen",
            "DELETE /api/test/seen?id={}",
            "POST /api/afternoon/steps/{}/begin",
            "POST /api/afternoon/steps/{}/done",
            "POST /api/afternoon/steps/{}/skip",
            "POST /api/afternoon/preparations/{}/done",
            "POST /api/afternoon/undo",
            "POST /api/afternoon/notes",
            "POST /api/afternoon/notes/{}",
            "DELETE /api/afternoon/notes/{}",
            "POST /api/jars/time",
            "POST /api/jars",
            "POST /api/jars/tap",
            "POST /api/jars/loads/{}/seal",
            "POST /api/jars/loads/{}/away",
            "POST /api/jars/undo",
            "GET /api/pans/{}/state",
            "GET /{}");
    private static final String JOIN = String.join(
            "\r\n",
            "GET /live HTTP/1.1",
            "Host: localhost",
            "Upgrade: websocket",
            "Connection: Upgrade",
            "Sec-WebSocket-Version: 13",
            "Sec-WebSocket-Key: c3Bvb25mYWxsLWZ1enohIQ==",
            "",
            "");
    private static final int HEALTH_EVERY = 500;

    private static @Nullable WebServer server;
    private static @Nullable Wire wire;
    private static int inputs;

    private ServiceFuzz() {}

    /**
     * A call by the first byte, its name by the first line, the rest as its body: it is answered by what it did or by one line
     * that says what to do, never by silence and never by a fault of ours.
     */
    public static void calls(byte[] input) {
        Cut cut = new Cut(input);
        String call = CALLS.get(cut.next() % CALLS.size());
        byte[] rest = cut.rest();
        int end = 0;
        while (end < rest.length && rest[end] != '\n') {
            end++;
        }
        String name = new String(rest, 0, end, StandardCharsets.ISO_8859_1);
        byte[] body = java.util.Arrays.copyOfRange(rest, Math.min(end + 1, rest.length), rest.length);
        String encoded = URLEncoder.encode(name, StandardCharsets.ISO_8859_1);
        String head = call.replace("{}", encoded) + " HTTP/1.1\r\nHost: localhost\r\nContent-Length: " + body.length
                + "\r\n\r\n";
        Wire.Answer answer = ask(head.getBytes(StandardCharsets.US_ASCII), body);
        Must.hold(answer.status() < 500, call + " is answered with " + answer.status());
        boolean spelled = name.chars().allMatch(c -> c >= ' ' && c < 127); // else the server itself refuses the address
        if (answer.status() >= 400 && call.contains("/api/") && spelled) {
            Must.hold(answer.body().startsWith("{\"error\":"), call + " is refused without a word: " + answer.body());
            Must.hold(
                    answer.body().length() < 1000,
                    call + " is refused in " + answer.body().length() + " characters");
        }
        healthy();
    }

    /** Bytes on a live channel that a page has opened: the channel closes or stays, and the service goes on. */
    public static void socket(byte[] input) {
        try (Wire page = new Wire(port())) {
            page.send(JOIN.getBytes(StandardCharsets.US_ASCII));
            Must.equal(page.answer().status(), 101, "a page is not let in");
            page.send(input);
            page.drain(1);
        } catch (IOException e) {
            // Closed upon what was sent, while it was sent.
        }
        healthy();
    }

    private static void healthy() {
        inputs++;
        if (inputs % HEALTH_EVERY == 0) {
            byte[] head = "GET /healthz HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(StandardCharsets.US_ASCII);
            Must.equal(ask(head, new byte[0]).status(), 200, "the service is not healthy");
        }
    }

    private static Wire.Answer ask(byte[] head, byte[] body) {
        for (int attempt = 1; true; attempt++) {
            Wire mine = wire == null ? new Wire(port()) : wire;
            try {
                byte[] all = java.util.Arrays.copyOf(head, head.length + body.length);
                System.arraycopy(body, 0, all, head.length, body.length);
                mine.send(all);
                Wire.Answer answer = mine.answer();
                wire = answer.closes() ? null : mine;
                if (answer.closes()) {
                    mine.close();
                }
                return answer;
            } catch (IOException e) {
                mine.close();
                wire = null;
                if (attempt == 3) {
                    throw new UncheckedIOException("no answer", e);
                }
            }
        }
    }

    private static int port() {
        WebServer running = server;
        if (running == null) {
            CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
            KitchenPlan plan = KitchenPlan.live("Hollin Bank", "batch 14", settings, 1);
            Kitchen kitchen = new Kitchen(plan, clock -> List.of(new HandProbe("pan", clock)), System::nanoTime);
            running = new WebServer(kitchen, "127.0.0.1", 0);
            kitchen.start();
            running.start();
            server = running;
        }
        return running.port();
    }
}
