package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A device keeps its name though it is found at another place, as long as the system knows such a name. */
final class StableNameTest {
    @TempDir
    Path folder = Path.of("");

    private Path device = Path.of("");
    private Path links = Path.of("");

    @BeforeEach
    void plugIn() throws IOException {
        device = Files.createFile(folder.resolve("ttyUSB0"));
        links = Files.createDirectory(folder.resolve("by-id"));
    }

    @Test
    void aDevice_isKnownByTheLinkThatLeadsToIt() throws IOException {
        Files.createSymbolicLink(links.resolve("usb-other"), Files.createFile(folder.resolve("ttyUSB1")));
        Path link = Files.createSymbolicLink(links.resolve("usb-thermometer"), device);
        assertThat(SerialPorts.identity(device.toString(), links)).isEqualTo(link.toString());
        assertThat(SerialPorts.identity(link.toString(), links)).isEqualTo(link.toString());
    }

    /** The system takes the whole folder away with the last device, at any moment. */
    @Test
    void aDevice_isKnownByItsPlace_whereNothingLeadsToIt() throws IOException {
        Path link = Files.createSymbolicLink(links.resolve("usb-thermometer"), device);
        Files.delete(device);
        assertThat(SerialPorts.identity(device.toString(), links)).isEqualTo(device.toString());
        Files.delete(link);
        Files.delete(links);
        assertThat(SerialPorts.identity(device.toString(), links)).isEqualTo(device.toString());
        Files.createFile(links);
        assertThat(SerialPorts.identity(device.toString(), links)).isEqualTo(device.toString());
    }
}
