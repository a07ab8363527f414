package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Quality;
import spoonfall.probe.line.LineFormat;

final class SerialProbeTest {
    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"text:%s|%s", "json:%s,field=temp|{\"temp\": %s}", "auto:%s|T: %s C", "auto:%s|{\"temp\": %s}"})
    void aDevice_isLostOnceAndFoundAgainWithinTwoSecondsUnderAnotherName(String spec, String form) throws IOException {
        Path link = folder.resolve("thermometer");
        PseudoTerminal first = PseudoTerminal.open();
        Files.createSymbolicLink(link, first.path());
        Hearing hearing = new Hearing();
        try (Probe probe = ProbeSpec.parse(spec.formatted(link)).open("pan", System::nanoTime)) {
            probe.start(hearing);
            first.send("x\n" + form.formatted("98.4") + "\n\0\0garbage\n");
            Hearing.await("a reading", () -> hearing.readings().size() == 2);
            first.close();
            Hearing.await("losing it", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).startsWith(link.toString()).contains("unplugged");
            Files.delete(link);
            try (PseudoTerminal second = PseudoTerminal.open()) {
                Files.createSymbolicLink(link, second.path());
                long back = System.nanoTime();
                Hearing.await("finding it again", () -> hearing.found().size() == 2);
                assertThat(Duration.ofNanos(System.nanoTime() - back)).isLessThan(Duration.ofSeconds(2));
                second.send("4\n" + form.formatted("99.1") + "\n");
                Hearing.await("its reading", () -> hearing.temperaturesC().size() == 2);
                assertThat(hearing.temperaturesC()).containsExactly(98.4, 99.1);
                assertThat(hearing.readings()).isSortedAccordingTo((a, b) -> Long.compare(a.atNanos(), b.atNanos()));
                assertThat(hearing.lost()).hasSize(1);
            }
        }
    }

    @Test
    void aSlowDeviceAtAWrongRate_isNotSaidToBeSilent() {
        Hearing hearing = new Hearing();
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = ProbeSpec.parse("auto:" + line.path()).open("pan", System::nanoTime)) {
            probe.start(hearing);
            line.send(new byte[] {(byte) 0xf3, (byte) 0x81, 7, (byte) 0xf3, 9, (byte) 0x99});
            Hearing.await("a refusal", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).contains("no text at 9600 baud", "baud=115200");
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
            line.send("\n98.4\n98.5\n98.6\n"); // a number amid noise may be noise: the third in a row is believed
            Hearing.await("a reading", () -> hearing.temperaturesC().size() == 1);
            assertThat(hearing.temperaturesC()).containsExactly(98.6);
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

    @Test
    void aDeviceThatIsNoSerialPort_isNotCalledInUse() {
        Hearing hearing = new Hearing();
        try (Probe probe = ProbeSpec.parse("text:/dev/null").open("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("trouble", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).startsWith("/dev/null is not a serial port");
        }
    }

    @Test
    void aFormatThatFails_isSaidBeforeTheThreadEnds() {
        LineFormat broken = new LineFormat() {
            @Override
            public Parsed parse(String line) {
                throw new IllegalStateException("broken");
            }

            @Override
            public String description() {
                return "a format that fails";
            }
        };
        Hearing hearing = new Hearing();
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = new SerialProbe(
                        "pan",
                        SerialSettings.defaults(line.path().toString()),
                        Optional.of(broken),
                        Optional.empty(),
                        System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("finding it", () -> !hearing.found().isEmpty());
            line.send("x\n98.4\n");
            Hearing.await("trouble", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost())
                    .singleElement()
                    .satisfies(said ->
                            assertThat(said).startsWith(line.path().toString()).contains("broken"));
        }
    }
}
