package spoonfall.cli.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cli.option.CommandException;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.NamedSpec;

final class ProbeOptionsTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void severalThermometers_areNamedByTheOptionOrInOrder() {
        List<NamedSpec> named =
                ProbeOptions.named(List.of("auto:/dev/a", "clip=text:/dev/b,baud=115200", "scpi:/dev/c"), List.of());
        assertThat(named.stream().map(NamedSpec::name)).containsExactly("pan", "clip", "third");
        assertThat(named.get(1).spec().place()).isEqualTo("/dev/b");
        assertThat(named.get(1).spec().options()).containsEntry("baud", "115200");
        assertThat(ProbeOptions.named(List.of(), named)).isEqualTo(named);
    }

    @Test
    void anotherDeviceAtThePlaceOfACalibratedOne_isRefusedBeforeAnythingStarts() throws IOException {
        Path links = Files.createDirectory(folder.resolve("by-id"));
        Path place = Files.createFile(folder.resolve("ttyUSB0"));
        Path first = Files.createSymbolicLink(links.resolve("usb-first"), place);
        List<NamedSpec> probes = ProbeOptions.named(List.of("text:" + place), List.of());
        CalibrationBook book = new CalibrationBook(folder.resolve("calibrations.json"));
        book.add(new CalibrationBook.Entry(
                first.toString(),
                place.toString(),
                Instant.parse("2026-11-25T18:00:00Z"),
                "1,240 m above sea level",
                false,
                new Correction(List.of(new Point(Reference.boilingWater(95.8, 0.4), 95.2, 0.02, 0.01)))));
        ProbeOptions.refuseStrangers(probes, book, links);

        Files.delete(first);
        Path second = Files.createSymbolicLink(links.resolve("usb-second"), place);
        assertThatThrownBy(() -> ProbeOptions.refuseStrangers(probes, book, links))
                .isInstanceOf(CommandException.class)
                .hasMessageContaining("was made with " + first)
                .hasMessageContaining("now " + second + " is there")
                .hasMessageContaining("calibrate this one")
                .hasMessageNotContaining("\n");

        Files.delete(place); // nothing is plugged in: nothing can be said, and it may be the right one that comes
        ProbeOptions.refuseStrangers(probes, book, links);
    }

    @Test
    void instrumentsOnOneLine_areNoStrangersToEachOther() throws IOException {
        Path place = Files.createFile(folder.resolve("ttyUSB0"));
        CalibrationBook book = new CalibrationBook(folder.resolve("calibrations.json"));
        book.add(new CalibrationBook.Entry(
                place + "#1",
                place.toString(),
                Instant.parse("2026-11-25T18:00:00Z"),
                "1,240 m above sea level",
                false,
                new Correction(List.of(new Point(Reference.boilingWater(95.8, 0.4), 95.2, 0.02)))));
        ProbeOptions.refuseStrangers(
                ProbeOptions.named(List.of("modbus:" + place + ",register=0,id=2"), List.of()), book, folder);
    }
}
