package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.probe.Hearing;

/** A client of the network that asks too much gets an end, and this machine's own page notices nothing. */
final class FloodTest {
    @TempDir
    private Path folder;

    @Test
    void whoAsksTooOften_waits_andThisMachineDoesNot() {
        try (ServedDoor door = ServedDoor.plain(folder)) {
            Optional<HttpResponse<String>> refused = IntStream.range(0, 2000)
                    .mapToObj(i -> door.outside("GET", "/api/state", "", ""))
                    .filter(answer -> answer.statusCode() == 429)
                    .findFirst();
            assertThat(refused.orElseThrow().headers().firstValue("Retry-After"))
                    .hasValue("1");
            assertThat(Caller.json(refused.orElseThrow()).path("error").asText())
                    .contains("asks too often");
            assertThat(door.here("GET", "/api/state", "").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void whoOpensTooManyConnections_isCut_andThisMachineIsNot() throws IOException {
        List<Socket> sockets = new ArrayList<>();
        try (ServedDoor door = ServedDoor.plain(folder)) {
            for (int i = 0; i < 120; i++) {
                sockets.add(new Socket(InetAddress.getLoopbackAddress(), door.server.networkPort()));
            }
            Hearing.await(
                    "the end of many",
                    () -> sockets.stream().filter(FloodTest::isCut).count() >= 40);
            assertThat(door.here("GET", "/api/state", "").statusCode()).isEqualTo(200);
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    @Test
    void bodiesThatNeverEnd_holdNoThreadOfThisMachinesPage() throws IOException {
        List<Socket> sockets = new ArrayList<>();
        try (ServedDoor door = ServedDoor.plain(folder)) {
            String host = "localhost:" + door.server.networkPort();
            String begun = "POST /api/door/pair HTTP/1.1\r\nHost: " + host + "\r\nOrigin: http://" + host
                    + "\r\nContent-Length: 4000\r\n\r\n{";
            for (int i = 0; i < 60; i++) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), door.server.networkPort());
                sockets.add(socket);
                socket.getOutputStream().write(begun.getBytes(StandardCharsets.US_ASCII));
            }
            for (int i = 0; i < 20; i++) {
                assertThat(door.here("GET", "/api/state", "").statusCode()).isEqualTo(200);
                assertThat(door.outside("GET", "/pair.html", "", "").statusCode())
                        .isEqualTo(200);
            }
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    private static boolean isCut(Socket socket) {
        try {
            socket.setSoTimeout(1);
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException e) {
            return false;
        } catch (IOException e) {
            return true;
        }
    }
}
