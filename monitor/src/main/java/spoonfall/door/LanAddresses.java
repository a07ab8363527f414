package spoonfall.door;

import java.io.IOException;
import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.List;

/** Where this machine is found in its networks. */
public final class LanAddresses {
    /** An address kept for documentation (RFC 5737): the way to anywhere outside leads through the usual network. */
    private static final InetSocketAddress ELSEWHERE = new InetSocketAddress("192.0.2.1", 9);

    private LanAddresses() {}

    /** Its IPv4 addresses, the one that leads outside first; empty without a network. */
    public static List<InetAddress> find() {
        List<InetAddress> found = new ArrayList<>();
        try {
            for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
                if (each.isUp() && !each.isLoopback()) {
                    each.inetAddresses()
                            .filter(address -> address instanceof Inet4Address && !address.isLinkLocalAddress())
                            .forEach(found::add);
                }
            }
        } catch (SocketException e) {
            return found; // as good as no network
        }
        InetAddress usual = usual();
        if (found.remove(usual)) {
            found.add(0, usual);
        }
        return found;
    }

    /** Nothing is sent: connecting a datagram socket only asks the system which way it would go. */
    private static InetAddress usual() {
        try (DatagramSocket socket = new DatagramSocket()) {
            socket.connect(ELSEWHERE);
            return socket.getLocalAddress();
        } catch (IOException | RuntimeException e) {
            return InetAddress.getLoopbackAddress();
        }
    }
}
