package spoonfall.cli.door;

import java.io.PrintWriter;
import java.net.InetAddress;
import java.util.List;
import spoonfall.door.LanAddresses;
import spoonfall.door.Role;
import spoonfall.web.WebServer;
import spoonfall.web.door.NetworkDoor;

/** What the terminal says of the door to the network. */
public final class NetworkNotice {
    private final NetworkDoor door;
    private final WebServer web;

    /** What is said of the door of a service that has started. */
    public NetworkNotice(NetworkDoor door, WebServer web) {
        this.door = door;
        this.web = web;
    }

    /** Prints where devices find the page and how they are let in; a first one gets its code right away. */
    public void print(PrintWriter out) {
        boolean secure = door.tls().isPresent();
        List<InetAddress> addresses = LanAddresses.find();
        String host = addresses.isEmpty() ? "this machine" : addresses.get(0).getHostAddress();
        out.println("Paired devices in the network: " + (secure ? "https" : "http") + "://" + host + ":"
                + web.networkPort());
        door.tls().ifPresent(key -> out.println("  by the certificate with the SHA-256 " + key.fingerprint()));
        if (!secure) {
            out.println(
                    "  without TLS: everybody in this network can read what passes, and take a device's place. Do so "
                            + "only where you trust everybody.");
        }
        if (door.devices().all().isEmpty() && PairingCard.isTerminal()) {
            new DoorClient(web.port()).code(Role.COOK).ifPresent(said -> PairingCard.print(out, said));
        } else {
            out.println("  Let one in, or shut one out: http://localhost:" + web.port()
                    + "/#devices, or \"spoonfall devices\".");
        }
    }
}
