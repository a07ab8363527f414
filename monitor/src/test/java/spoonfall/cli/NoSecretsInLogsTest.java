package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cli.option.Logging;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.door.DeviceBook;
import spoonfall.door.HostNames;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.web.WebServer;
import spoonfall.web.door.NetworkDoor;

/** Neither a code nor a token gets into the log, however much is said there. */
final class NoSecretsInLogsTest {
    @TempDir
    private Path folder;

    private final List<String> lines = new CopyOnWriteArrayList<>();
    private final Handler listener = new Handler() {
        private final SimpleFormatter formatter = new SimpleFormatter();

        @Override
        public void publish(LogRecord record) {
            lines.add(formatter.format(record));
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };

    @BeforeEach
    void listen() {
        Logging.configure(true);
        listener.setLevel(Level.ALL);
        Logger.getLogger("").addHandler(listener);
    }

    @AfterEach
    void stop() {
        Logging.configure(false);
    }

    private static HttpResponse<String> send(String address, String method, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address))
                .method(method, HttpRequest.BodyPublishers.ofString(body))
                .headers(headers);
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void pairing_usingAndRevokingADevice_leavesNoSecretInTheLog() throws IOException, InterruptedException {
        DeviceBook devices = DeviceBook.open(folder.resolve("devices.json"));
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        Kitchens kitchens =
                Kitchens.one(new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime));
        NetworkDoor door = new NetworkDoor(0, Optional.empty(), new HostNames(Set.of()), devices);
        WebServer server = new WebServer(kitchens, "127.0.0.1", 0, Optional.of(door));
        kitchens.start();
        server.start();
        try {
            String here = "http://localhost:" + server.port() + "/api/door";
            String outside = "http://localhost:" + server.networkPort();
            String made = send(here + "/code", "POST", "{\"role\":\"cook\"}", "X-None", "1")
                    .body();
            String shown = made.replaceAll("(?s).*\"code\":\"([0-9A-Z]{4}-[0-9A-Z]{4})\".*", "$1");
            assertThat(shown).hasSize(9);
            String wrong = "{\"code\":\"WRNG-WRNG\",\"name\":\"Phone\"}";
            String right = "{\"code\":\"" + shown + "\",\"name\":\"Phone\"}";
            send(outside + "/api/door/pair", "POST", wrong, "Origin", outside);
            send(outside + "/api/door/pair", "POST", "{\"code\":\"" + shown + "\",", "Origin", outside);
            HttpResponse<String> paired = send(outside + "/api/door/pair", "POST", right, "Origin", outside);
            String cookie =
                    paired.headers().firstValue("Set-Cookie").orElseThrow().split(";", -1)[0];
            assertThat(send(outside + "/api/state", "GET", "", "Cookie", cookie).statusCode())
                    .isEqualTo(200);
            send(outside + "/api/nothing", "GET", "", "Cookie", cookie);
            send(here + "/devices/" + devices.all().get(0).id(), "DELETE", "", "X-None", "1");
            send(outside + "/api/state", "GET", "", "Cookie", cookie);
            String token = cookie.split("=", 2)[1];
            String log = String.join("", lines);
            assertThat(log)
                    .contains("a wrong pairing code came from 127.0.0.1")
                    .contains("\"Phone\" was paired as a cook");
            assertThat(log).doesNotContain(shown, shown.replace("-", ""), token, "WRNG");
        } finally {
            server.close();
            kitchens.close();
        }
    }
}
