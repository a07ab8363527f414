package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.Hearing;
import spoonfall.probe.serial.PseudoTerminal;

final class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder = Path.of("");

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "serve|which thermometer? Give --probe",
                "serve --probe /dev/ttyUSB0|write a kind and a place, such as auto:/dev/ttyUSB0",
                "serve --probe auto:/dev/x --elevation -20000m|is not where anyone cooks",
                "serve --probe auto:/dev/x --elevation 1240|needs a unit",
                "serve --probe auto:/dev/x --elevation 1m --pressure 898hPa|give --pressure alone",
                "serve --probe auto:/dev/x --sea-level-pressure 1016hPa|needs --elevation too",
                "serve --probe auto:/dev/x --water-boil 60C|water does not boil at 60.0",
                "serve --probe auto:/dev/x --water-boil 95.6|needs a unit",
                "serve --probe auto:/dev/x --probe auto:/dev/x|cannot both have the port /dev/x",
                "serve --probe auto:/dev/x --probe pan=auto:/dev/y|two probes are called pan",
                "serve --probe auto:/dev/x,class=gold|class must be pt-a, pt-b",
                "calibrate --probe auto:/dev/x --water-boil 95.6C|cannot correct it",
                "serve --probe auto:/dev/x --rise 40C|must be 1 to 15",
                "serve --probe auto:/dev/x --port 99999|--port must be 0 to 65535",
                "serve --probe auto:/dev/x --port many|'many' is not a whole number",
                "serve --probe trace:none.csv|there is no file none.csv",
                "serve --probe auto:/dev/x --announce no-such-voice|there is no program no-such-voice to announce with; install it",
                "demo --announce /tmp|there is no program /tmp to announce with",
                "demo --announce 'espeak|a quote is not closed",
                "demo --announce-unit F|--announce-unit needs --announce too",
                "demo --announce sh --announce-unit K|--announce-unit must be C or F, not K",
                "serve none.toml|there is no kitchen file none.toml",
                "serve --prob auto:/dev/x|Unknown option: '--prob'; did you mean --probe? (spoonfall serve --help)",
                "serve --elevaton=1240m|Unknown option: '--elevaton'; did you mean --elevation?",
                "serve --wibble|Unknown option: '--wibble' (spoonfall serve --help)",
                "demo --lan|Unknown option: '--lan'; it goes with serve (",
                "demo kitchen.toml|\"kitchen.toml\" is one too many",
                "serve --hand --port 99999999999|'99999999999' is far too large",
                "simulate clean --seed x|'x' is not a whole number",
                "simulate clean --power x|'x' is not a number",
                "diagnose x|Invalid value for ID: 'x' is not a whole number",
                "log show x|Invalid value for ID: 'x' is not a whole number",
                "log thin --older-than x|'x' is not a whole number",
                "log export 2 e.txt|a cook is a CSV or a JSON file; call it cook.csv",
                "log lst|there is no command \"lst\"; did you mean list?",
                "srve|there is no command \"srve\"; did you mean serve? (spoonfall --help)",
                "replay none.csv|there is no file none.csv",
                "replay|Missing required parameter: 'TRACE'",
                "replay ../sample-traces/clean.csv --speed 0|speed \"0\" must be a number above 0",
                "replay ../sample-traces/clean.csv --page --speed max|needs a speed it can show",
                "simulate flood|unknown scenario \"flood\"; it can be all, clean, stall",
                "simulate clean --power 99|power in kW must be",
                "simulate varied --kind flood|unknown kind \"flood\"; it can be mixed, clean, stall",
                "simulate varied --power 1.5|--power is drawn at random in a varied cook; leave it out",
                "evaluate|which traces? Name a folder of them, or give --simulate 300",
                "evaluate none|there is no folder none",
                "evaluate ../docs|holds no traces",
                "evaluate ../sample-traces --simulate 3|not both",
                "evaluate --simulate 0|--simulate must be 1 to",
                "evaluate --simulate 1 --kind flood|unknown kind \"flood\"",
                "fry|there is no command \"fry\" ("
            })
    void whatIsWrong_isOneLineWithTheWayOutAndACodeThatIsNotZero(String line, String message) {
        assertThat(run(line.split(" "))).isNotZero();
        assertThat(err.toString().strip()).contains(message).doesNotContain("\n", "\tat ");
        assertThat(err.toString()).startsWith("spoonfall");
    }

    @ParameterizedTest
    @CsvSource({
        "2, serve",
        "2, serve --hand --port 99999",
        "2, serve --hand --port 22x",
        "2, serve --hand --lan --lan-port 99999",
        "2, serve --hand --elevation 1240",
        "2, serve --hand --pressure 1hPa",
        "2, replay ../sample-traces/clean.csv --water-boil 60C",
        "2, serve --probe /dev/ttyUSB0",
        "2, demo --speed 0",
        "2, replay ../sample-traces/clean.csv --speed 0",
        "2, replay ../sample-traces/clean.csv --rise 40C",
        "2, calibrate --probe text:/dev/x",
        "2, simulate flood",
        "2, simulate clean --power 99",
        "2, simulate varied --kind flood",
        "2, evaluate --simulate 0",
        "2, evaluate --simulate 1 --by-hand 1s",
        "2, log thin --older-than -1",
        "2, log outcome 1 --set hard",
        "2, log export 2 e.txt",
        "2, jars --jar bucket",
        "2, plan --add sugar",
        "2, diagnose 1 --set solid",
        "2, devices code --role owner",
        "1, serve none.toml",
        "1, replay none.csv",
        "1, evaluate none",
        "1, demo --announce no-such-voice",
    })
    void whatIsNotUnderstood_isTwo_andWhatCannotBeDone_isOne(int code, String line) {
        assertThat(run(line.split(" "))).isEqualTo(code);
    }

    @Test
    void aMeasuredWaterBoil_isWhatAReplayIsMeasuredAgainst() {
        assertThat(run(
                        "replay",
                        "../sample-traces/clean.csv",
                        "--json",
                        "--speed",
                        "max",
                        "--water-boil",
                        "204.8F",
                        "--rise",
                        "4.4C"))
                .isZero();
        assertThat(out.toString()).contains("\"waterBoilC\":96.0,\"gelPointC\":100.4,");
    }

    @Test
    void aPortThatIsTaken_isNamedWithTheNextOne() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int port = taken.getLocalPort();
            assertThat(run("demo", "--port", String.valueOf(port))).isEqualTo(1);
            assertThat(err.toString().strip())
                    .isEqualTo("spoonfall demo: port " + port
                            + " is taken by another program; give another one, such as --port " + (port + 1));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"serve", "demo", "ports", "replay", "simulate", "science", "evaluate"})
    void everyCommand_helps(String command) {
        assertThat(run(command, "--help")).isZero();
        assertThat(out.toString()).contains("Usage: spoonfall " + command).doesNotContain("\u001b");
    }

    @Test
    void theDemo_saysThatItsPanHeedsNobody() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            run("demo", "--port", String.valueOf(taken.getLocalPort()));
        }
        assertThat(out.toString()).contains("The demo's pan is a recording: it goes on whatever you tap.");
    }

    @Test
    void theLab_helpsWithTheNamesThatItKnows() {
        assertThat(run("simulate", "--help")).isZero();
        assertThat(out.toString()).contains("all, clean, stall", "set-tests", "coarse", "varied", "late-sugar");
        out.getBuffer().setLength(0);
        assertThat(run("evaluate", "--help")).isZero();
        assertThat(out.toString()).contains("mixed", "spikes", "late-sugar");
    }

    @Test
    void verbose_showsWhereItWentWrong() {
        assertThat(run("--verbose", "replay", "none.csv")).isEqualTo(1);
        assertThat(err.toString()).contains("\tat spoonfall.");
    }

    @Test
    void replayJson_printsOneObjectALineAsDescribed() throws IOException {
        assertThat(run(
                        "replay",
                        "--speed",
                        "max",
                        "--json",
                        "../sample-traces/stall.csv",
                        "--elevation",
                        "1240m",
                        "--rise",
                        "4.4C"))
                .isZero();
        List<String> lines = out.toString().lines().toList();
        ObjectMapper mapper = new ObjectMapper();
        boolean stalled = false;
        boolean boiled = false;
        double lastStatusT = -10;
        for (String line : lines) {
            JsonNode node = mapper.readTree(line);
            switch (node.path("type").asText()) {
                case "status" -> {
                    assertThat(node.fieldNames())
                            .toIterable()
                            .containsExactly(
                                    "type",
                                    "t",
                                    "temperatureC",
                                    "waterBoilC",
                                    "gelPointC",
                                    "stage",
                                    "ratePerMinC",
                                    "solids",
                                    "etaS",
                                    "etaLowS",
                                    "etaHighS");
                    assertThat(node.path("t").asDouble()).isEqualTo(lastStatusT + 10);
                    assertThat(node.path("gelPointC").asDouble()
                                    - node.path("waterBoilC").asDouble())
                            .isBetween(4.399, 4.401);
                    lastStatusT = node.path("t").asDouble();
                }
                case "alarm" ->
                    stalled |= node.path("alarm").asText().equals("stalled")
                            && node.path("change").asText().equals("raised")
                            && node.path("text").asText().contains("Is the heat on?");
                case "stage" -> boiled |= node.path("stage").asText().equals("rolling-boil");
                case "reminder" -> {
                    assertThat(node.path("reminder").asText()).isIn("chill-plates", "warm-jars", "stir");
                    assertThat(node.path("text").asText()).isNotEmpty().doesNotContain("{");
                }
                default -> throw new AssertionError(line);
            }
        }
        assertThat(stalled).isTrue();
        assertThat(boiled).isTrue();
    }

    @Test
    void aTraceOfTwoColumnsAlone_isReplayed() throws IOException {
        Path csv = Files.writeString(folder.resolve("cook.csv"), "elapsed_s,temperature_c\n0,20\n10,21\n");
        assertThat(run("replay", csv.toString())).isZero();
        assertThat(out.toString()).contains("sea level assumed");
    }

    @Test
    void replay_drawsTheClimbAndItsEvents() {
        assertThat(run("replay", "../sample-traces/clean.csv")).isZero();
        assertThat(out.toString())
                .contains("rolling boil", "start-set-tests: Start the set tests now.", "sets here", "####");
    }

    @Test
    void replay_saysOfTheSetWhatThePageSays() {
        assertThat(run("replay", "../sample-traces/past.csv")).isZero();
        assertThat(out.toString())
                .contains("  close to setting\n", "  at the setting point\n", "  past the setting point\n")
                .contains("  gel-point: ")
                .doesNotContain("gel point", "test window");
    }

    @Test
    void simulate_writesATraceAndRefusesToWriteOverIt() {
        String into = folder.toString();
        assertThat(run("simulate", "gap", "--seed", "5", "--into", into)).isZero();
        assertThat(folder.resolve("gap.csv")).exists();
        assertThat(folder.resolve("gap.csv-metadata.json")).content().contains("\"simulated\"");
        assertThat(run("simulate", "gap", "--into", into)).isEqualTo(1);
        assertThat(err.toString()).contains("is there already").contains("--force");
    }

    @Test
    void evaluate_scoresTheCooksThatSimulateMadeAsItScoresThoseItDraws() throws IOException {
        Path json = folder.resolve("score.json");
        Path page = folder.resolve("score.html");
        Path cooks = folder.resolve("cooks");
        assertThat(run("simulate", "varied", "--count", "4", "--seed", "3", "--into", cooks.toString()))
                .isZero();
        out.getBuffer().setLength(0);
        assertThat(run("evaluate", cooks.toString(), "--json", json.toString(), "--report", page.toString()))
                .isZero();
        String ofFiles = out.toString();
        assertThat(ofFiles).contains("4 cooks", "Forecast of the gel point", "False alarms per 100 h");
        assertThat(new ObjectMapper().readTree(json.toFile()).path("cooks").asInt())
                .isEqualTo(4);
        assertThat(page).content().startsWith("<!DOCTYPE html>").contains("cooks: 4 cooks");
        out.getBuffer().setLength(0);
        assertThat(run("evaluate", "--simulate", "4", "--seed", "3")).isZero();
        assertThat(out.toString()).isEqualTo(ofFiles);
    }

    @Test
    void ports_answers() {
        assertThat(run("ports")).isZero();
        assertThat(run("ports", "--json")).isZero();
    }

    @Test
    void watchingAPort_showsWhatComesAndCountsIt() throws InterruptedException {
        try (PseudoTerminal line = PseudoTerminal.open()) {
            Thread player = new Thread(() -> {
                Hearing.await("the port being found", () -> out.toString().contains("one number a line"));
                line.send("x\nbanner\n98.4\nNaN\n98.5\n");
            });
            player.start();
            assertThat(run("ports", "--watch", "text:" + line.path(), "--seconds", "3"))
                    .isZero();
            player.join();
        }
        assertThat(out.toString())
                .contains("98.40 °C   98.4", "no number   banner", "Heard: 2 good, 1 no number, 1 not finite.");
    }

    @Test
    void warmUp_usesTheServiceOnceAndEnds() {
        assertThat(run("warm-up")).isZero();
    }
}
