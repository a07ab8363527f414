package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Quality;

final class SerialProbeTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void aDevice_isLostOnceAndFoundAgainWithinTwoSecondsUnderAnotherName() throws IOException {
        Path link = folder.resolve("thermometer");
        PseudoTerminal first = PseudoTerminal.open();
        Files.createSymbolicLink(link, first.path());
        Hearing hearing = new Hearing();
        try (Probe probe = ProbeSpec.parse("text:" + link).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("finding it", () -> hearing.found().size() == 1);
            first.send("x\n98.4\n");
            Hearing.await("a reading", () -> hearing.temperaturesC().size() == 1);
            first.close();
            Hearing.await("losing it", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).startsWith(link.toString()).contains("unplugged");
            Files.delete(link);
            try (PseudoTerminal second = PseudoTerminal.open()) {
                Files.createSymbolicLink(link, second.path());
                long back = System.nanoTime();
                Hearing.await("finding it again", () -> hearing.found().size() == 2);
                assertThat(Duration.ofNanos(System.nanoTime() - back)).isLessThan(Duration.ofSeconds(2));
                second.send("4\n99.1\n");
                Hearing.await("its reading", () -> hearing.temperaturesC().size() == 2);
                assertThat(hearing.temperaturesC()).containsExactly(98.4, 99.1);
                assertThat(hearing.lost()).hasSize(1);
            }
        }
    }

    @Test
    void aMissingPort_isNamedOnceWithTheWayOut() {
        Hearing hearing = new Hearing();
        Path nowhere = folder.resolve("ttyUSB9");
        try (Probe probe = ProbeSpec.parse("text:" + nowhere).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("trouble", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost())
                    .containsExactly(
                            nowhere + " is not there. Plug the thermometer in; \"spoonfall ports\" lists the ports.");
        }
    }

    @Test
    void aPortInUse_isSaidToBe() {
        Hearing second = new Hearing();
        Hearing first = new Hearing();
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe holder = ProbeSpec.parse("text:" + line.path()).open("pan", System::nanoTime);
                Probe probe = ProbeSpec.parse("text:" + line.path()).open("canner", System::nanoTime)) {
            holder.start(first);
            Hearing.await("the first", () -> !first.found().isEmpty());
            probe.start(second);
            Hearing.await("trouble", () -> !second.lost().isEmpty());
            assertThat(second.lost().get(0)).startsWith(line.path().toString()).contains("in use by another program");
        }
    }

    @Test
    void aFileThatIsNoPort_isRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "98.4\n");
        Hearing hearing = new Hearing();
        try (Probe probe = ProbeSpec.parse("text:" + file).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("trouble", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).startsWith(file.toString()).contains("is not a serial port");
        }
    }

    @Test
    void noPermission_namesTheGroupThatHelps() {
        // Root may open anything, so the sentence is asked for by the system's error number (EACCES, 13).
        assertThat(Trouble.notOpened("/dev/null", 13)).contains("/dev/null", "sudo usermod -aG dialout $USER");
    }

    @Test
    void bytesThatAreNoText_areCountedAndTheRateIsDoubted() {
        Hearing hearing = new Hearing();
        SplittableRandom random = new SplittableRandom(20260117);
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = ProbeSpec.parse("text:" + line.path()).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("finding it", () -> !hearing.found().isEmpty());
            byte[] noise = new byte[3000];
            random.nextBytes(noise);
            line.send(noise);
            Hearing.await("doubt", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).contains("no text at 9600 baud", "baud=115200");
            line.send("\n98.4\n");
            Hearing.await("a reading", () -> hearing.temperaturesC().size() == 1);
            assertThat(hearing.temperaturesC()).containsExactly(98.4);
        }
    }

    @Test
    void garbageBetweenReadings_neverBecomesATemperature() {
        Hearing hearing = new Hearing();
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = ProbeSpec.parse("text:" + line.path()).open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("finding it", () -> !hearing.found().isEmpty());
            line.send("half 97\n98.4\nNaN\n1e400\n-300\n\0\0\0 98\nbanner v1.2.3\n12 13\n" + "9".repeat(1_000_000)
                    + "\n98.5\n");
            Hearing.await("the last reading", () -> hearing.temperaturesC().size() == 2);
            assertThat(hearing.temperaturesC()).containsExactly(98.4, 98.5);
            assertThat(hearing.readings())
                    .extracting(reading -> reading.quality())
                    .containsExactly(
                            Quality.GOOD,
                            Quality.NOT_FINITE,
                            Quality.NOT_FINITE,
                            Quality.OUT_OF_RANGE,
                            Quality.NOT_TEXT,
                            Quality.NO_NUMBER,
                            Quality.NO_NUMBER,
                            Quality.TOO_LONG,
                            Quality.GOOD);
        }
    }
}
