package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.probe.serial.PseudoTerminal;

/** From plugging a thermometer in to readings that are corrected, each command in a process of its own. */
final class CalibrateTest {
    @TempDir
    Path folder = Path.of("");

    private String run(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "spoonfall.cli.Main"));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("XDG_CONFIG_HOME", folder.toString());
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor(10, TimeUnit.SECONDS);
        return out + "code " + process.exitValue();
    }

    @Test
    void aThermometerThatReadsLow_isCorrectedUntilThatIsTakenBack() throws Exception {
        AtomicBoolean playing = new AtomicBoolean(true);
        try (PseudoTerminal line = PseudoTerminal.open()) {
            String probe = "text:" + line.path();
            Thread player = new Thread(() -> {
                while (playing.get()) {
                    line.send("95.2\n");
                    try {
                        TimeUnit.MILLISECONDS.sleep(25);
                    } catch (InterruptedException e) {
                        return;
                    }
                }
            });
            player.setDaemon(true);
            player.start();
            String kept = run("calibrate", "--probe", probe, "--elevation", "1240m", "--speed", "40");
            assertThat(kept)
                    .contains(
                            "Water boils at 95.85 °C here",
                            "a minute of it is needed",
                            "at 95.8 °C add +0.65 °C (±0.38")
                    .endsWith("code 0");
            assertThat(run("calibrate", "--probe", probe, "--list")).contains("add +0.65 °C");
            assertThat(run("calibrate", "--list"))
                    .contains(line.path().toString())
                    .contains("at 95.8 °C add +0.65 °C")
                    .doesNotContain("taken back")
                    .endsWith("code 0");
            assertThat(run("calibrate", "--undo"))
                    .contains("which thermometer?")
                    .endsWith("code 2");
            playing.set(false);
            player.join();
            assertThat(run("calibrate", "--probe", probe, "--undo"))
                    .contains("Took back")
                    .endsWith("code 0");
            assertThat(run("calibrate", "--probe", probe, "--list")).contains("(taken back)");
            assertThat(run("calibrate", "--list")).contains("(taken back)");
        }
    }

    @Test
    void whereWaterBoils_mustBeKnown() throws Exception {
        assertThat(run("calibrate", "--probe", "text:/dev/x"))
                .contains("where does water boil here?")
                .endsWith("code 2");
        assertThat(run("calibrate")).contains("which thermometer?").endsWith("code 2");
    }

    @Test
    void whatWasNeverCalibrated_isListedAsThat() throws Exception {
        assertThat(run("calibrate", "--list"))
                .contains("No thermometer was calibrated yet.")
                .endsWith("code 0");
    }

    @Test
    void aPortThatIsNotThere_isWaitedForAsLongAsIsSaid() throws Exception {
        String place = folder.resolve("ttyUSB7").toString();
        assertThat(run("calibrate", "--probe", "text:" + place, "--elevation", "1240m", "--minutes", "0.01"))
                .contains(place + " is not there")
                .contains("It waits up to 0.01 minutes for a minute that stands still. Ctrl-C stops it.")
                .contains("It is looked for all the while.")
                .contains("it did not stand still within 0.01 minutes: nothing readable came")
                .endsWith("code 1");
    }
}
