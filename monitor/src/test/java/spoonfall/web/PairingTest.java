package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.door.DeviceBook;
import spoonfall.door.Role;
import spoonfall.probe.Hearing;
import spoonfall.web.door.Guests;

/** Devices of the network are let in by a code, and shut out again. */
final class PairingTest {
    @TempDir
    private Path folder;

    private ServedDoor door;

    @BeforeEach
    void serve() {
        door = ServedDoor.secure(folder);
    }

    @AfterEach
    void stop() {
        door.close();
    }

    @Test
    void aStranger_seesThePageOnWhichItPairs_andNothingElse() {
        for (String path : new String[] {"/api/state", "/metrics", "/healthz", "/app.js", "/api/door"}) {
            HttpResponse<String> answer = door.outside("GET", path, "", "");
            assertThat(answer.statusCode()).as(path).isEqualTo(401);
            assertThat(Caller.json(answer).path("error").asText()).as(path).contains("not paired");
        }
        assertThat(door.outside("POST", "/api/cook", "", "").statusCode()).isEqualTo(401);
        HttpResponse<String> browsed = door.outside("GET", "/", "", "Accept", "text/html");
        assertThat(browsed.statusCode()).isEqualTo(303);
        assertThat(browsed.headers().firstValue("Location")).hasValue("/pair.html");
        assertThat(browsed.body()).doesNotContain("<");
        HttpResponse<String> page = door.outside("GET", "/pair.html", "", "");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'");
        assertThat(door.here("GET", "/api/state", "").statusCode()).isEqualTo(200);
    }

    @Test
    void aViewer_looksAndHears_butActsOnNothing() {
        HttpResponse<String> entered = door.enter(door.code("viewer"), "Hall phone", "");
        assertThat(entered.statusCode()).isEqualTo(201);
        assertThat(entered.headers().firstValue("Set-Cookie").orElseThrow())
                .startsWith("__Host-spoonfall=")
                .contains("HttpOnly", "SameSite=Strict", "Secure", "Path=/");
        String cookie = ServedDoor.cookie(entered);
        assertThat(door.outside("GET", "/api/state", "", cookie).statusCode()).isEqualTo(200);
        for (String path : new String[] {"/api/cook", "/api/alarms/stalled-1/acknowledge", "/api/jars/tap"}) {
            HttpResponse<String> answer = door.outside("POST", path, "{}", cookie);
            assertThat(answer.statusCode()).as(path).isEqualTo(403);
            assertThat(Caller.json(answer).path("error").asText()).contains("may look, not act");
        }
        assertThat(door.outside("DELETE", "/api/check", "", cookie).statusCode())
                .isEqualTo(403);
        String batch = "{\"ingredients\":[{\"amount\":\"1 kg\",\"food\":\"damsons\"},"
                + "{\"amount\":\"1 kg\",\"food\":\"sugar\"}]}";
        for (String base : new String[] {"/api", "/api/pans/pan"}) { // planning changes nothing, using a plan does
            assertThat(door.outside("POST", base + "/plan", batch, cookie).statusCode())
                    .isEqualTo(200);
            assertThat(door.outside("POST", base + "/plan/cook", batch, cookie).statusCode())
                    .isEqualTo(403);
            assertThat(door.outside("POST", base + "/plan/filled", "{\"jars\":5}", cookie)
                            .statusCode())
                    .isEqualTo(403);
        }
        ServedDoor.Channel channel = new ServedDoor.Channel();
        door.live(cookie, door.outside(), channel).join();
        Hearing.await("the snapshot", () -> channel.heard);
    }

    @Test
    void aViewerThatEntersACooksCode_acts_andItsOldTokenIsGone() {
        String viewer = door.pair("viewer", "Phone");
        String cook = ServedDoor.cookie(door.enter(door.code("cook"), "Phone", viewer));
        assertThat(door.outside("POST", "/api/cook", "", cook).statusCode()).isEqualTo(201);
        assertThat(door.outside("GET", "/api/state", "", viewer).statusCode()).isEqualTo(401);
        assertThat(door.devices.all()).hasSize(1);
    }

    @Test
    void aCode_worksOnce_andNotAfterANewOne() {
        String first = door.code("cook");
        String second = door.code("cook");
        assertThat(door.enter(first, "Phone", "").statusCode()).isEqualTo(403);
        assertThat(door.enter(second.toLowerCase(java.util.Locale.ROOT).replace("-", " "), "Phone", "")
                        .statusCode())
                .isEqualTo(201);
        assertThat(door.enter(second, "Other phone", "").statusCode()).isEqualTo(403);
        JsonNode state = Caller.json(door.here("GET", "/api/door", ""));
        assertThat(state.path("code").path("state").asText()).isEqualTo("used");
        assertThat(state.path("code").has("code")).isFalse();
    }

    @Test
    void wrongCodes_waitLongerAndLonger() {
        String code = door.code("cook");
        for (int i = 0; i < 3; i++) {
            assertThat(door.enter("AAAA-AAAA", "Phone", "").statusCode()).isEqualTo(403);
        }
        HttpResponse<String> waits = door.enter(code, "Phone", "");
        assertThat(waits.statusCode()).isEqualTo(429);
        assertThat(waits.headers()
                        .firstValue("Retry-After")
                        .map(Integer::parseInt)
                        .orElseThrow())
                .isBetween(1, 5);
    }

    @Test
    void aRevokedDevice_isShutOutAtOnce_andItsLiveChannelEnds() {
        String cookie = door.pair("cook", "Tablet");
        ServedDoor.Channel channel = new ServedDoor.Channel();
        WebSocket socket = door.live(cookie, door.outside(), channel).join();
        Hearing.await("the snapshot", () -> channel.heard);
        String id = door.devices.all().get(0).id();
        assertThat(door.here("DELETE", "/api/door/devices/" + id, "").statusCode())
                .isEqualTo(200);
        Hearing.await("the end", () -> channel.closedWith == Guests.SHUT_OUT);
        assertThat(door.outside("GET", "/api/state", "", cookie).statusCode()).isEqualTo(401);
        assertThat(door.here("DELETE", "/api/door/devices/" + id, "").statusCode())
                .isEqualTo(404);
        socket.abort();
    }

    @Test
    void onlyThisMachine_letsInAndShutsOut() {
        String cook = door.pair("cook", "Tablet");
        String id = door.devices.all().get(0).id();
        assertThat(door.outside("POST", "/api/door/code", "{\"role\":\"cook\"}", cook)
                        .statusCode())
                .isEqualTo(403);
        assertThat(door.outside("DELETE", "/api/door/devices/" + id, "", cook).statusCode())
                .isEqualTo(403);
        JsonNode own = Caller.json(door.outside("GET", "/api/door", "", cook));
        assertThat(own.path("role").asText()).isEqualTo("cook");
        assertThat(own.has("devices")).isFalse();
        assertThat(own.has("code")).isFalse();
    }

    @Test
    void devicesOutliveARestart_asHashesInAFileOfTheOwners() throws IOException {
        String cookie = door.pair("viewer", "Tablet");
        Path file = folder.resolve("devices.json");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(Files.readString(file)).doesNotContain(cookie.split("=", -1)[1]);
        door.close();
        door = ServedDoor.secure(folder);
        assertThat(door.outside("GET", "/api/state", "", cookie).statusCode()).isEqualTo(200);
    }

    @Test
    void theNetwork_isServedByHttp2_andTheLiveChannelBesideIt() {
        String cookie = door.pair("viewer", "Tablet");
        HttpResponse<String> page = door.outside("GET", "/", "", cookie);
        assertThat(page.version()).isEqualTo(HttpClient.Version.HTTP_2);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("<title>Spoonfall</title>");
    }

    @Test
    void whereThereIsNoRoom_theCodeStillWorks_andWhoIsLetInPairsAnew() {
        String cookie = door.pair("viewer", "Tablet");
        for (int others = 1; others < DeviceBook.MOST; others++) {
            door.devices.add("Device " + others, Role.VIEWER, Instant.EPOCH);
        }
        String again = ServedDoor.cookie(door.enter(door.code("cook"), "Tablet", cookie));
        assertThat(door.outside("GET", "/api/state", "", cookie).statusCode()).isEqualTo(401);
        assertThat(door.outside("POST", "/api/cook", "", again).statusCode()).isEqualTo(201);
        String code = door.code("viewer");
        HttpResponse<String> refused = door.enter(code, "Phone", "");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("revoke one first");
        door.devices.revoke(door.devices.all().get(0).id());
        assertThat(door.enter(code, "Phone", "").statusCode()).isEqualTo(201);
    }

    @Test
    void aNameThatCannotBe_isSaid_andTheCodeStillWorks() {
        String code = door.code("viewer");
        HttpResponse<String> answer = door.enter(code, "x".repeat(60), "");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("1 to 40 characters");
        assertThat(door.enter(code, "Phone", "").statusCode()).isEqualTo(201);
    }
}
