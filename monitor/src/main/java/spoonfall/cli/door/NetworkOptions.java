package spoonfall.cli.door;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Understood;
import spoonfall.door.DeviceBook;
import spoonfall.door.HostNames;
import spoonfall.door.LanAddresses;
import spoonfall.door.tls.PemFiles;
import spoonfall.door.tls.SelfMade;
import spoonfall.door.tls.ServerKey;
import spoonfall.kitchen.file.NetworkEntry;
import spoonfall.log.DataFolder;
import spoonfall.web.door.NetworkDoor;

/** The options by which paired devices in the network see the page. */
public final class NetworkOptions {
    @Option(
            names = "--lan",
            description =
                    "Let phones and tablets of this network in, each paired once by a code; this machine's own page "
                            + "stays at --port.")
    private boolean lan;

    @Option(
            names = "--lan-port",
            paramLabel = "PORT",
            description = "The port for the network; the page's port and one unless given, 0 for any free one.")
    private @Nullable Integer lanPort;

    @Option(
            names = "--host-name",
            paramLabel = "NAME",
            description =
                    "A name by which the network knows this machine, such as kitchen.home; give it again for another.")
    private List<String> hostNames = List.of();

    @Option(
            names = "--tls",
            paramLabel = "self",
            description =
                    "By what the network's pages are served: self makes a certificate, which is also what happens "
                            + "unless you say otherwise.")
    private @Nullable String tls;

    @Option(names = "--tls-cert", paramLabel = "FILE", description = "A certificate of your own (PEM), with its chain.")
    private @Nullable Path certificate;

    @Option(names = "--tls-key", paramLabel = "FILE", description = "The private key of that certificate (PEM).")
    private @Nullable Path key;

    @Option(
            names = "--plain",
            description = "Serve the network without TLS: everybody in it can then read and change what devices send.")
    private boolean plain;

    /**
     * The door to the network, if it is to be opened.
     *
     * @param written what the kitchen file says of it; options win over it
     * @param port the page's own port
     * @throws MisuseException if the options contradict each other
     * @throws IllegalArgumentException if a file is missing or not what it ought to be
     */
    public Optional<NetworkDoor> door(Optional<NetworkEntry> written, int port, DataFolder data) {
        Optional<NetworkEntry> said = written.filter(NetworkEntry::lan);
        if (!lan && said.isEmpty()) {
            refuseWithoutLan();
            return Optional.empty();
        }
        List<String> names = new ArrayList<>(hostNames);
        said.ifPresent(entry -> names.addAll(entry.names()));
        HostNames hosts = Understood.value(() -> HostNames.ofThisMachine(names));
        int chosen =
                lanPort != null ? lanPort : said.flatMap(NetworkEntry::port).orElseGet(() -> port == 0 ? 0 : port + 1);
        if (chosen < 0 || chosen > 65535 || (chosen == port && port != 0)) {
            throw new MisuseException("--lan-port must be 0 to 65535 and another than the page's own, not " + chosen);
        }
        return Optional.of(
                new NetworkDoor(chosen, serverKey(said, hosts, data), hosts, DeviceBook.open(data.devices())));
    }

    private void refuseWithoutLan() {
        if (lanPort != null || !hostNames.isEmpty() || tls != null || certificate != null || key != null || plain) {
            throw new MisuseException("--lan-port, --host-name, --tls, --tls-cert, --tls-key and --plain are about the "
                    + "network; add --lan to serve it");
        }
    }

    private Optional<ServerKey> serverKey(Optional<NetworkEntry> said, HostNames hosts, DataFolder data) {
        Path chain = certificate;
        Path secret = key;
        boolean open = plain;
        if (chain == null && secret == null && tls == null && !plain && said.isPresent()) {
            chain = said.get().certificate().orElse(null);
            secret = said.get().key().orElse(null);
            open = said.get().plain();
        }
        if (tls != null && !tls.equals("self")) {
            throw new MisuseException(
                    "--tls can only be self; give a certificate of your own with --tls-cert and --tls-key");
        }
        boolean given = chain != null || secret != null;
        if ((given && tls != null) || (open && (given || tls != null))) {
            throw new MisuseException("give one of --tls self, --tls-cert with --tls-key, or --plain");
        }
        if (open) {
            return Optional.empty();
        }
        if (!given) {
            return Optional.of(SelfMade.in(data.path(), hosts.names(), LanAddresses.find(), Instant.now()));
        }
        if (chain == null || secret == null) {
            throw new MisuseException("--tls-cert and --tls-key belong together; give both");
        }
        return Optional.of(PemFiles.read(chain, secret));
    }
}
