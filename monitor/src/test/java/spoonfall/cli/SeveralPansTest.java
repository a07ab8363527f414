package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.probe.Hearing;
import spoonfall.probe.serial.PseudoTerminal;

/** {@code serve} with a kitchen file of several pans. */
final class SeveralPansTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String TWO_PANS = """
            name = "Hollin Bank"
            elevation = "1240m"
            [[pan]]
            name = "big"
            batch = "Seville orange"
            [[pan]]
            name = "small"
            rise = "9F"
            """;

    @TempDir
    Path folder = Path.of("");

    private Path file(String toml) throws IOException {
        return Files.writeString(folder.resolve("kitchen.toml"), toml);
    }

    private static JsonNode json(int port, String path) {
        URI address = URI.create("http://localhost:" + port + path);
        try (InputStream in = address.toURL().openStream()) {
            return MAPPER.readTree(in);
        } catch (IOException e) {
            return MAPPER.createObjectNode(); // not there yet
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private Process serve(Path kitchen, int port) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home", ""), "bin", "java")
                                .toString(),
                        "-Duser.home=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "spoonfall.cli.Main",
                        "serve",
                        kitchen.toString(),
                        "--data",
                        folder.resolve("data").toString(),
                        "--port",
                        String.valueOf(port))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("serve.log").toFile())
                .start();
    }

    @Test
    void twoPansAndACanner_areWatchedThroughThreeSerialLines() throws Exception {
        try (PseudoTerminal big = PseudoTerminal.open();
                PseudoTerminal small = PseudoTerminal.open();
                PseudoTerminal canner = PseudoTerminal.open()) {
            int port = freePort();
            Process server = serve(file(TWO_PANS + """
                    [[probe]]
                    kind = "text"
                    place = "%s"
                    [[probe]]
                    pan = "small"
                    kind = "text"
                    place = "%s"
                    [[probe]]
                    in = "canner"
                    kind = "text"
                    place = "%s"
                    """.formatted(big.path(), small.path(), canner.path())), port);
            try {
                Hearing.await("all three", () -> {
                    big.send("T1: 80.5 C\r\n");
                    small.send("T1: 61.5 C\r\n");
                    canner.send("T1: 95.5 C\r\n");
                    JsonNode state = json(port, "/api/pans/small/state");
                    return json(port, "/api/state").path("status").path("seenC").asDouble() == 80.5
                            && state.path("status").path("seenC").asDouble() == 61.5
                            && state.path("canner").path("temperatureC").asDouble() == 95.5;
                });
                JsonNode small1 = json(port, "/api/pans/small/state");
                assertThat(small1.path("basis").path("riseC").asDouble()).isEqualTo(5.0);
                assertThat(small1.path("probes")).hasSize(1);
                assertThat(small1.path("pans").findValuesAsText("name")).containsExactly("big", "small");
                assertThat(Files.readString(folder.resolve("serve.log")))
                        .contains("watches " + big.path() + ", " + small.path() + ", " + canner.path());
            } finally {
                server.destroy();
                assertThat(server.waitFor(10, TimeUnit.SECONDS)).isTrue();
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[[probe]]\\nplace = \"/dev/x\"||no thermometer is in the pan small; give it a [[probe]] with pan = \"small\"",
                "[[probe]]\\nplace = \"/dev/x\"\\n[[probe]]\\nplace = \"/dev/y\"\\npan = \"small\"|--batch x|--batch and --water-boil are about one pan",
                "[[probe]]\\nplace = \"/dev/x\"\\n[[probe]]\\nplace = \"/dev/y\"\\npan = \"small\"|--water-boil 95.9C|--batch and --water-boil are about one pan"
            })
    void whatCannotBe_isOneLineWithTheWayOut(String probes, String options, String message) throws IOException {
        Path kitchen = file(TWO_PANS + probes.replace("\\n", "\n"));
        StringWriter err = new StringWriter();
        String line = "serve " + kitchen + (options == null ? "" : " " + options);
        assertThat(Main.run(new PrintWriter(new StringWriter(), true), new PrintWriter(err, true), line.split(" ")))
                .isEqualTo(options == null ? 1 : 2);
        assertThat(err.toString().strip()).contains(message).doesNotContain("\n");
    }
}
