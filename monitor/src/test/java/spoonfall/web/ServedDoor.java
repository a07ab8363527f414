package spoonfall.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.jspecify.annotations.Nullable;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.door.DeviceBook;
import spoonfall.door.HostNames;
import spoonfall.door.tls.SelfMade;
import spoonfall.door.tls.ServerKey;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.Diary;
import spoonfall.log.store.book.BatchBook;
import spoonfall.web.door.NetworkDoor;

/** A real service with a door to the network, and who knocks at it. */
public final class ServedDoor implements AutoCloseable {
    public final ToldProbe probe = new ToldProbe("pan", 0);
    final DeviceBook devices;
    final WebServer server;
    private final Kitchen kitchen = new Kitchen(
            KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1),
            clock -> List.of(probe),
            System::nanoTime);
    private final HttpClient client;
    private final String scheme;

    private ServedDoor(Path folder, Optional<ServerKey> tls, HttpClient client, Optional<BatchBook> book) {
        devices = DeviceBook.open(folder.resolve("devices.json"));
        scheme = tls.isPresent() ? "https" : "http";
        this.client = client;
        NetworkDoor door = new NetworkDoor(0, tls, new HostNames(Set.of("kitchen.example")), devices);
        Kitchens kitchens = new Kitchens(List.of(kitchen), Optional.empty(), Diary.none(), book);
        server = new WebServer(kitchens, "127.0.0.1", 0, Optional.of(door));
        kitchen.start();
        server.start();
    }

    /** One that serves the network without TLS. */
    static ServedDoor plain(Path folder) {
        return plain(folder, Optional.empty());
    }

    /** The same, with a book of cooks if there is to be one. */
    static ServedDoor plain(Path folder, Optional<BatchBook> book) {
        return new ServedDoor(folder, Optional.empty(), HttpClient.newHttpClient(), book);
    }

    /** One with a certificate of its own, and clients that trust it. */
    public static ServedDoor secure(Path folder) {
        return secure(folder, Optional.empty());
    }

    /** The same, with a book of cooks if there is to be one. */
    static ServedDoor secure(Path folder, Optional<BatchBook> book) {
        ServerKey key = SelfMade.in(folder, List.of(), List.of(), Instant.now());
        return new ServedDoor(folder, Optional.of(key), Trusting.client(key.certificate()), book);
    }

    /** The address at which devices find it. */
    public String outside() {
        return scheme + "://localhost:" + server.networkPort();
    }

    /** The address of this machine's own page. */
    public String here() {
        return "http://localhost:" + server.port();
    }

    /** What this machine's own page asks. */
    HttpResponse<String> here(String method, String path, String body) {
        return send(request(here(), method, path, body));
    }

    /** What a page in the network asks, with a cookie that may be empty. */
    HttpResponse<String> outside(String method, String path, String body, String cookie) {
        HttpRequest.Builder request = request(outside(), method, path, body).header("Origin", outside());
        return send(cookie.isEmpty() ? request : request.header("Cookie", cookie));
    }

    /** The same, with one more header. */
    HttpResponse<String> outside(String method, String path, String cookie, String header, String value) {
        HttpRequest.Builder request = request(outside(), method, path, "").header(header, value);
        return send(cookie.isEmpty() ? request : request.header("Cookie", cookie));
    }

    /** What a page in the network asks, with a file. */
    HttpResponse<byte[]> file(String method, String path, byte[] file, String cookie)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(outside() + path))
                .method(method, HttpRequest.BodyPublishers.ofByteArray(file))
                .header("Origin", outside());
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static HttpRequest.Builder request(String base, String method, String path, String body) {
        return HttpRequest.newBuilder(URI.create(base + path))
                .method(method, HttpRequest.BodyPublishers.ofString(body));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** A code for a role, as this machine's page shows it. */
    String code(String role) {
        JsonNode door = Caller.json(here("POST", "/api/door/code", "{\"role\":\"" + role + "\"}"));
        return door.path("code").path("code").asText();
    }

    /** Enters a code on a device; its cookie, or empty if it was not let in. */
    HttpResponse<String> enter(String code, String name, String cookie) {
        String body = "{\"code\":\"" + code + "\",\"name\":\"" + name + "\"}";
        return outside("POST", "/api/door/pair", body, cookie);
    }

    /** Pairs a device and returns its cookie. */
    public String pair(String role, String name) {
        return cookie(enter(code(role), name, ""));
    }

    /** The cookie of an answer, without what the browser does with it. */
    static String cookie(HttpResponse<?> answer) {
        return answer.headers().firstValue("Set-Cookie").orElseThrow().split(";", -1)[0];
    }

    /** Opens the live channel from the network. */
    CompletableFuture<WebSocket> live(String cookie, String origin, Channel channel) {
        WebSocket.Builder builder = client.newWebSocketBuilder().header("Origin", origin);
        if (!cookie.isEmpty()) {
            builder.header("Cookie", cookie);
        }
        return builder.buildAsync(URI.create(outside().replaceFirst("http", "ws") + "/live"), channel);
    }

    /** What a live channel heard. */
    static final class Channel implements WebSocket.Listener {
        /** How a channel ends whose farewell is lost: who still sends when the other side closes may never read why. */
        static final int CUT = -1;

        volatile boolean heard;
        volatile int closedWith;

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            heard = true;
            socket.request(1);
            return null;
        }

        @Override
        public @Nullable CompletionStage<?> onClose(WebSocket socket, int code, String reason) {
            closedWith = code;
            return null;
        }

        @Override
        public void onError(WebSocket socket, Throwable error) {
            closedWith = CUT;
        }
    }

    /** Sends bytes as they are to a port, and returns the first of the answer. */
    static String raw(int port, String request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(8000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            InputStream in = socket.getInputStream();
            byte[] answer = new byte[3000];
            int count = in.read(answer);
            return new String(answer, 0, Math.max(0, count), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            return "cut: " + e.getMessage();
        }
    }

    @Override
    public void close() {
        server.close();
        kitchen.close();
    }
}
