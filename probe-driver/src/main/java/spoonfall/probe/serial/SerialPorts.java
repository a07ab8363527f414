package spoonfall.probe.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The serial ports of this machine. */
public final class SerialPorts {
    private static final Path DEVICES = Path.of("/dev");
    /** Where Linux keeps a link for every serial device, named by its maker, product and serial number. */
    public static final Path STABLE_LINKS = Path.of("/dev/serial/by-id");

    private SerialPorts() {}

    /**
     * A serial port and what the operating system knows of it.
     *
     * @param path the device's path
     * @param stablePath a link to it that stays when the system names the device anew
     * @param maker who made it
     * @param product what it is
     * @param serialNumber its serial number
     * @param trouble why it cannot be used, with the way out
     */
    public record Port(
            String path,
            Optional<String> stablePath,
            Optional<String> maker,
            Optional<String> product,
            Optional<String> serialNumber,
            Optional<String> trouble) {}

    /** All of them, by path. */
    public static List<Port> list() {
        NativeLibrary.prepare();
        List<Port> ports = new ArrayList<>(Arrays.stream(SerialPort.getCommPorts())
                .map(SerialPorts::describe)
                .toList());
        ports.addAll(forbidden(ports));
        ports.sort(Comparator.comparing(Port::path));
        return List.copyOf(ports);
    }

    /** Those that the library leaves out because we may not open them: the ones a cook most needs to hear of. */
    private static List<Port> forbidden(List<Port> listed) {
        List<Port> ports = new ArrayList<>();
        try (DirectoryStream<Path> devices = Files.newDirectoryStream(DEVICES, "tty{USB,ACM,AMA,S}[0-9]*")) {
            for (Path device : devices) {
                boolean known = listed.stream().anyMatch(port -> port.path().equals(device.toString()));
                boolean allowed = Files.isReadable(device) && Files.isWritable(device);
                if (!known && !allowed && isReal(device)) {
                    ports.add(new Port(
                            device.toString(),
                            stablePath(device),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(Trouble.notOpened(device.toString(), 0))));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot list " + DEVICES + ": " + e.getMessage(), e);
        }
        return ports;
    }

    /** Linux makes ttyS files for ports that the machine does not have; their type is 0. */
    private static boolean isReal(Path device) {
        Path type = Path.of("/sys/class/tty", String.valueOf(device.getFileName()), "type");
        try {
            return !Files.exists(type) || !Files.readString(type).strip().equals("0");
        } catch (IOException e) {
            return true; // better one port too many than one too few
        }
    }

    private static Port describe(SerialPort port) {
        String path = port.getSystemPortPath();
        Path file = Path.of(path);
        boolean allowed = Files.isReadable(file) && Files.isWritable(file);
        return new Port(
                path,
                stablePath(file),
                known(port.getManufacturer()),
                known(port.getPortDescription()),
                known(port.getSerialNumber()),
                allowed ? Optional.empty() : Optional.of(Trouble.notOpened(path, 0)));
    }

    private static Optional<String> known(String text) {
        return text == null || text.isBlank() || text.equalsIgnoreCase("unknown")
                ? Optional.empty()
                : Optional.of(text.strip());
    }

    /** The stable name of the device at {@code place} by the links in a folder; the place itself where there is none. */
    public static String identity(String place, Path linksFolder) {
        try {
            return stablePath(Path.of(place), linksFolder).orElse(place);
        } catch (InvalidPathException e) {
            return place; // no file in this system: its name is all there is
        }
    }

    private static Optional<String> stablePath(Path device) {
        return stablePath(device, STABLE_LINKS);
    }

    private static Optional<String> stablePath(Path device, Path linksFolder) {
        try (Stream<Path> links = Files.list(linksFolder)) {
            return links.filter(link -> pointsTo(link, device))
                    .map(Path::toString)
                    .sorted()
                    .findFirst();
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty(); // there is none, or it went away with its last device while we looked
        }
    }

    private static boolean pointsTo(Path link, Path device) {
        try {
            return link.toRealPath().equals(device.toRealPath());
        } catch (IOException e) {
            return false; // the device went away while we looked
        }
    }
}
