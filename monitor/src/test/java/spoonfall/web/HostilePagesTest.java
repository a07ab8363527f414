package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.Hearing;

/** Pages and programs that mean harm, at a real service: each is refused, and the service is well afterwards. */
final class HostilePagesTest {
    @TempDir
    private static Path folder;

    private static ServedDoor door;
    private static String cook = "";
    private static String viewer = "";

    @BeforeAll
    static void serve() {
        door = ServedDoor.plain(folder);
        cook = door.pair("cook", "Tablet");
        viewer = door.pair("viewer", "Hall phone");
    }

    @AfterAll
    static void stop() {
        door.close();
    }

    @AfterEach
    void theServiceIsWell_andTheCookStillComesIn() {
        assertThat(door.here("GET", "/healthz", "").statusCode()).isEqualTo(200);
        assertThat(door.outside("GET", "/api/state", "", cook).statusCode()).isEqualTo(200);
    }

    private static int port() {
        return door.server.networkPort();
    }

    private static String ask(int port, String line, String... headers) {
        return ServedDoor.raw(
                port, line + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n");
    }

    private static String post(String host, String origin, String... more) {
        String headers = String.join("\r\n", more);
        return ask(
                port(),
                "POST /api/cook",
                "Host: " + host,
                "Origin: " + origin,
                "Content-Length: 0",
                "Cookie: " + cook + (headers.isEmpty() ? "" : "\r\n" + headers));
    }

    private static long cookNumber() {
        return Caller.json(door.here("GET", "/api/state", ""))
                .path("cook")
                .path("number")
                .asLong();
    }

    static List<String> otherOrigins() {
        String own = "localhost:" + port();
        return List.of(
                "http://evil.example",
                "null",
                "",
                "http://localhost",
                "https://" + own,
                "http://" + own + ".evil.example",
                "http://evil.example@" + own,
                "http://" + own + "/",
                "http://kitchen.example:" + port(),
                "http://127.0.0.1:" + port(),
                "http://localhost:" + door.server.port(),
                "http://[::1",
                "http://" + own + " http://evil.example");
    }

    @ParameterizedTest
    @MethodSource("otherOrigins")
    void anotherOrigin_changesNothing_withTheCooksOwnCookie(String origin) {
        long before = cookNumber();
        assertThat(post("localhost:" + port(), origin)).startsWith("HTTP/1.1 403");
        assertThat(cookNumber()).isEqualTo(before);
    }

    @Test
    void aRequestThatHidesWhereItIsFrom_changesNothing() {
        String own = "localhost:" + port();
        String noOrigin = ask(port(), "POST /api/cook", "Host: " + own, "Content-Length: 0", "Cookie: " + cook);
        assertThat(noOrigin).startsWith("HTTP/1.1 403");
        assertThat(post(own, "http://" + own, "Sec-Fetch-Site: cross-site")).startsWith("HTTP/1.1 403");
        assertThat(post(own, "http://" + own, "Sec-Fetch-Site: same-site")).startsWith("HTTP/1.1 403");
        assertThat(post(own, "http://" + own, "Sec-Fetch-Site: same-origin")).startsWith("HTTP/1.1 201");
        assertThat(post("kitchen.example:" + port(), "http://kitchen.example:" + port()))
                .startsWith("HTTP/1.1 201");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Host: evil.example",
                "Host: evil.example:80",
                "Host: localhost.evil.example",
                "Host: 127.0.0.1.evil.example",
                "Host: 192.0.2.7",
                "Host: [fe80::1]",
                "Host: localhost@evil.example",
                "Host: localhost/evil",
                "Host: ",
                "X-Other: 1",
                "Host: localhost\r\nHost: evil.example",
            })
    void aForgedHost_isTurnedAwayAtBothPorts(String host) {
        for (int port : new int[] {port(), door.server.port()}) {
            assertThat(ask(port, "GET /api/state", host, "Cookie: " + cook))
                    .startsWith("HTTP/1.1 4")
                    .doesNotContain("snapshot");
        }
    }

    @Test
    void aRequestThatAProxyPassedOn_isNotTakenForThisMachines() {
        for (String header : List.of("X-Forwarded-For: 192.0.2.7", "Forwarded: for=192.0.2.7")) {
            assertThat(ask(door.server.port(), "GET /api/state", "Host: localhost", header))
                    .startsWith("HTTP/1.1 403");
        }
    }

    private static String handshake(int port, String... headers) {
        return ServedDoor.raw(
                port,
                "GET /live HTTP/1.1\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\n"
                        + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n" + String.join("\r\n", headers)
                        + "\r\n\r\n");
    }

    @Test
    void aLiveChannelFromAnotherSite_isNotOpened() {
        String host = "Host: localhost:" + port();
        String own = "Origin: http://localhost:" + port();
        String cookie = "Cookie: " + cook;
        assertThat(handshake(port(), host, "Origin: http://evil.example", cookie))
                .startsWith("HTTP/1.1 403");
        assertThat(handshake(port(), host, "Origin: null", cookie)).startsWith("HTTP/1.1 403");
        assertThat(handshake(port(), host, cookie)).startsWith("HTTP/1.1 403");
        assertThat(handshake(port(), host, own)).startsWith("HTTP/1.1 401");
        assertThat(handshake(port(), "Host: evil.example", "Origin: http://evil.example", cookie))
                .startsWith("HTTP/1.1 403");
        assertThat(handshake(port(), host, own, cookie)).startsWith("HTTP/1.1 101");
        assertThat(handshake(door.server.port(), "Host: localhost", "Origin: http://evil.example"))
                .startsWith("HTTP/1.1 403");
    }

    @Test
    void aTokenThatIsRevokedChangedOrMisplaced_opensNothing() {
        String revoked = door.pair("cook", "Lent phone");
        String id = door.devices.all().get(door.devices.all().size() - 1).id();
        assertThat(door.outside("GET", "/api/state", "", revoked).statusCode()).isEqualTo(200);
        door.here("DELETE", "/api/door/devices/" + id, "");
        String token = cook.split("=", 2)[1];
        String hash = door.devices.all().get(0).tokenHash();
        String last = token.endsWith("A") ? "B" : "A";
        for (String cookie : List.of(
                revoked,
                cook + "A",
                "spoonfall=" + token.substring(0, token.length() - 1) + last,
                "spoonfall=" + hash,
                "spoonfall=",
                "Spoonfall=" + token,
                "__Host-spoonfall=" + token)) {
            assertThat(door.outside("GET", "/api/state", "", cookie).statusCode())
                    .as(cookie.substring(0, 10))
                    .isEqualTo(401);
        }
        assertThat(door.outside("GET", "/api/state?spoonfall=" + token, "", "").statusCode())
                .isEqualTo(401);
        assertThat(door.outside("GET", "/api/state", "", "Authorization", "Bearer " + token)
                        .statusCode())
                .isEqualTo(401);
    }

    @Test
    void aViewer_actsByNoMethodAndNoOverride() {
        long before = cookNumber();
        for (String method : List.of("POST", "PUT", "PATCH", "DELETE", "OPTIONS", "QUERY", "BREW")) {
            assertThat(door.outside(method, "/api/cook", "", viewer).statusCode())
                    .as(method)
                    .isEqualTo(403);
        }
        for (String header : List.of("X-HTTP-Method-Override", "X-HTTP-Method", "x-http-method-override")) {
            HttpResponse<String> answer = door.outside("GET", "/api/cook", viewer, header, "POST");
            assertThat(answer.statusCode()).as(header).isIn(400, 404);
        }
        assertThat(door.outside("GET", "/api/cook?_method=POST", "", viewer).statusCode())
                .isEqualTo(404);
        String own = "localhost:" + port();
        assertThat(ask(port(), "post /api/cook", "Host: " + own, "Origin: http://" + own, "Cookie: " + viewer))
                .startsWith("HTTP/1.1 4");
        assertThat(cookNumber()).isEqualTo(before);
    }

    @Test
    void giantRequests_areRefusedBeforeTheyAreRead() {
        String own = "localhost:" + port();
        String[] known = {"Host: " + own, "Origin: http://" + own, "Cookie: " + cook};
        String big = "x".repeat(20_000);
        assertThat(door.outside("POST", "/api/base", "{\"elevation\":\"" + "1".repeat(5000) + "m\"}", cook)
                        .statusCode())
                .isEqualTo(413);
        assertThat(ask(port(), "POST /api/base", known[0], known[1], known[2], "Content-Length: 10000000000"))
                .startsWith("HTTP/1.1 4");
        assertThat(ask(port(), "POST /api/base", known[0], known[1], known[2], "Content-Length: -1"))
                .startsWith("HTTP/1.1 4");
        assertThat(ask(port(), "GET /api/state", known[0], known[2], "X-Big: " + big))
                .startsWith("HTTP/1.1 431");
        assertThat(ask(port(), "GET /" + big, known[0], known[2])).startsWith("HTTP/1.1 4");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "null",
                "[]",
                "\"text\"",
                "{\"elevation\":1240}",
                "{\"elevation\":{\"elevation\":\"1m\"}}",
                "{\"elevation\":\"1240m\",\"admin\":true}",
                "{\"elevation\":\"\\u0000\"}",
                "{\"elevation\":\"1e999m\"}",
                "\u0000\u0001\u0002",
            })
    void malformedBodies_areAnsweredInOneSentence(String body) {
        HttpResponse<String> answer = door.outside("POST", "/api/base", body, cook);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText()).isNotBlank();
        String deep = "[".repeat(2000);
        assertThat(door.outside("POST", "/api/base", deep, cook).statusCode()).isEqualTo(400);
    }

    @Test
    void aLiveChannelThatTalks_isCutWhateverItSays() {
        for (String words : List.of("hello", "x".repeat(100_000))) {
            ServedDoor.Channel channel = new ServedDoor.Channel();
            door.live(cook, door.outside(), channel)
                    .join()
                    .sendText(words, true)
                    .exceptionally(cut -> null);
            Hearing.await("the end", () -> channel.closedWith != 0);
            assertThat(channel.closedWith).isIn(ServedDoor.Channel.CUT, 1008, 1009);
        }
        for (String frame :
                List.of("\u00ff\u00ff\u00ff\u00ff", "\u0081\u007f\u007f\u00ff\u00ff\u00ff\u00ff\u00ff\u00ff\u00ff")) {
            String answer = ServedDoor.raw(
                    port(),
                    "GET /live HTTP/1.1\r\nHost: localhost:" + port() + "\r\nOrigin: http://localhost:" + port()
                            + "\r\nCookie: " + cook + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                            + "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n"
                            + frame);
            assertThat(answer).startsWith("HTTP/1.1 101");
        }
    }

    @Test
    void bytesThatAreNoRequest_areRefused() {
        for (String bytes : List.of(
                "\r\n\r\n\r\n",
                "GET\r\n\r\n",
                "GET /api/state\r\n\r\n",
                "\u0016\u0003\u0001\u0002\u0000\u0001",
                "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
                "GET /api/state HTTP/1.1\r\nHost: localhost\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
                "GET /api/state HTTP/1.1\r\nHost : localhost\r\n\r\n",
                "GET http://evil.example/api/state HTTP/1.1\r\nHost: localhost\r\nCookie: " + cook + "\r\n\r\n",
                "CONNECT evil.example:443 HTTP/1.1\r\nHost: evil.example\r\n\r\n",
                "TRACE / HTTP/1.1\r\nHost: localhost:" + port() + "\r\nCookie: " + cook + "\r\n\r\n")) {
            assertThat(ServedDoor.raw(port(), bytes + "\r\n\r\n"))
                    .as(bytes.strip())
                    .doesNotStartWith("HTTP/1.1 2")
                    .doesNotContain("snapshot");
        }
    }

    @Test
    void aRequestThatDrips_isCut() throws IOException {
        try (Socket slow = new Socket(InetAddress.getLoopbackAddress(), port())) {
            slow.getOutputStream()
                    .write("GET /api/state HTTP/1.1\r\nHost: localhost\r\nX-Slow: "
                            .getBytes(StandardCharsets.US_ASCII));
            Hearing.await("its end", () -> {
                try {
                    slow.getOutputStream().write('x');
                    slow.getOutputStream().flush();
                    return slow.getInputStream().available() > 0;
                } catch (IOException e) {
                    return true;
                }
            });
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../devices.json",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/..%2f..%2fetc/passwd",
                "/..%5c..%5cetc/passwd",
                "/%252e%252e/%252e%252e/etc/passwd",
                "/..;/..;/etc/passwd",
                "/webjars/../../etc/passwd",
                "/webjars/uplot/%2e%2e/%2e%2e/%2e%2e/spoonfall/web/door/Door.class",
                "/icons/..%00/app.js",
                "/%c0%ae%c0%ae/etc/passwd",
                "//etc/passwd",
                "/pair.html/../api/state",
                "/pair.html/..;/api/state",
                "/pair.html%2f..%2fapi/state",
                "/pair.html;/../api/state",
                "/./api/state",
                "/API/state",
            })
    void noPath_leadsOutOfThePage_orPastTheDoor(String path) {
        String host = "Host: localhost:" + port();
        for (String who : List.of("Cookie: " + cook, "Cookie: none=1")) {
            String answer = ask(port(), "GET " + path, host, who);
            assertThat(answer).doesNotContain("root:", "tokenSha256", "\u00ca\u00fe\u00ba\u00be");
            if (who.endsWith("none=1")) {
                assertThat(answer).doesNotStartWith("HTTP/1.1 2").doesNotContain("snapshot");
            }
        }
    }
}
