package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.serial.PseudoTerminal;
import spoonfall.probe.trace.Trace;

/**
 * The main job: a thermometer on a serial line plays a whole cook at forty times the pace of life into the real
 * {@code serve}, in a process of its own, and a real browser follows it through an unplug and a restart.
 */
final class WholeCookTest {
    private static final double SPEED = 40;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    Path folder = Path.of("");

    /**
     * Plays the trace into whatever line is plugged in at the moment, and goes on with its last reading: on a busy machine the
     * service may need longer to start again than the trace lasts.
     */
    private static final class Player extends Thread {
        private final Trace trace;
        private volatile PseudoTerminal line;
        private volatile boolean plugged = true;
        private volatile boolean playing = true;

        private Player(Trace trace, PseudoTerminal line) {
            super("player");
            this.trace = trace;
            this.line = line;
            setDaemon(true);
        }

        @Override
        public void run() {
            long start = System.nanoTime();
            int last = trace.size() - 1;
            for (int i = 0; playing; i++) {
                double elapsedS = i <= last ? trace.elapsedS(i) : trace.elapsedS(last) + i - last;
                long due = start + (long) (elapsedS / SPEED * 1e9);
                long wait = due - System.nanoTime();
                try {
                    TimeUnit.NANOSECONDS.sleep(Math.max(0, wait));
                } catch (InterruptedException e) {
                    return;
                }
                synchronized (this) {
                    if (plugged) {
                        double temperatureC =
                                trace.temperatureC(Math.min(i, last)).orElseThrow();
                        line.send("T1: %.1f C\r\n".formatted(temperatureC));
                    }
                }
            }
        }

        synchronized void unplug() {
            plugged = false;
            line.close();
        }

        synchronized void plug(PseudoTerminal newLine) {
            line = newLine;
            plugged = true;
        }
    }

    private Process serve(Path link, int port) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home", ""), "bin", "java")
                                .toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "spoonfall.cli.Main",
                        "serve",
                        "--probe",
                        "auto:" + link,
                        "--elevation",
                        "4068ft",
                        "--port",
                        String.valueOf(port),
                        "--data",
                        folder.resolve("data").toString(),
                        "--name",
                        "Hollin Bank",
                        "--speed",
                        String.valueOf((int) SPEED))
                .redirectErrorStream(true)
                .redirectOutput(
                        folder.resolve("serve-" + System.nanoTime() + ".log").toFile())
                .start();
    }

    private static JsonNode state(int port) {
        URI address = URI.create("http://localhost:" + port + "/api/state");
        try (InputStream in = address.toURL().openStream()) {
            return MAPPER.readTree(in);
        } catch (IOException e) {
            return MAPPER.createObjectNode();
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    /** Waits for something on the page for as long as a cook at speed takes. */
    private static LocatorAssertions within(Locator locator, double seconds) {
        setDefaultAssertionTimeout(seconds * 1000);
        return assertThat(locator);
    }

    @Test
    void aCookIsCalledToThePan_throughAnUnplugARestartAndASecondPage() throws Exception {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        Path link = folder.resolve("thermometer");
        PseudoTerminal line = PseudoTerminal.open();
        Files.createSymbolicLink(link, line.path());
        int port = freePort();
        Process server = serve(link, port);
        Player player = new Player(trace, line);
        try (Browsers browsers = Browsers.open()) {
            Hearing.await(
                    "the service",
                    () -> state(port).path("kitchen").path("name").asText().equals("Hollin Bank"));
            Page page = browsers.browser().newPage();
            page.navigate("http://localhost:" + port + "/");
            within(page.getByTestId("temperature"), 10).isHidden();
            player.start();

            within(page.getByTestId("sentence-state"), 10).hasText("Warming up.");
            within(page.getByTestId("sentence-state"), 20).hasText("Coming to the boil.");
            within(page.getByTestId("sentence-state"), 60).hasText("Climbing steadily.");
            assertThat(page.getByTestId("sentence-act")).containsText("Set tests in");

            // The thermometer is pulled out halfway and comes back as another device behind the same link.
            player.unplug();
            within(page.getByTestId("sentence-state"), 10).containsText("No word from the probe since");
            within(page.getByTestId("note"), 10).containsText("was unplugged");
            within(page.getByTestId("temperature"), 10).isHidden();
            PseudoTerminal second = PseudoTerminal.open();
            Files.delete(link);
            Files.createSymbolicLink(link, second.path());
            player.plug(second);
            within(page.getByTestId("temperature"), 10).isVisible();

            Page other = browsers.browser().newPage();
            other.navigate("http://localhost:" + port + "/");
            within(page.getByTestId("call-title"), 60).hasText("Start the set tests now.");
            within(other.getByTestId("call-title"), 10).hasText("Start the set tests now.");
            double calledT = alarm(port, "start-set-tests").path("raisedT").asDouble();
            double windowT = trace.info().firstT("window").orElseThrow();
            assertThat(calledT).isBetween(windowT - 40, windowT + 60);
            page.bringToFront();
            page.keyboard().press("Enter");
            within(page.getByTestId("call"), 10).isHidden();
            within(other.getByTestId("call"), 10).isHidden();

            server.destroyForcibly().waitFor();
            within(page.getByTestId("sentence-state"), 10).containsText("No word from Spoonfall since");
            within(page.getByTestId("temperature"), 10).isHidden();
            server = serve(link, port);
            within(page.getByTestId("temperature"), 60).isVisible();
            within(other.getByTestId("temperature"), 20).isVisible();
        } finally {
            player.playing = false;
            server.destroyForcibly().waitFor();
        }
    }

    private static JsonNode alarm(int port, String name) {
        for (JsonNode alarm : state(port).path("alarms")) {
            if (alarm.path("alarm").asText().equals(name)) {
                return alarm;
            }
        }
        throw new AssertionError("no alarm " + name);
    }
}
