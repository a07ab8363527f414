package spoonfall.door;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;

/** Names clients by their address, so that limits meet the same one again. */
public final class Clients {
    private static final int NETWORK_BYTES = 8;

    private Clients() {}

    /**
     * What a client is called: its IPv4 address, or the network of its IPv6 address (/64), within which a device takes any address it likes.
     *
     * @param address the address as digits, not a name
     */
    public static String named(String address) {
        String bare = address.replaceAll("[\\[\\]]|%.*", "");
        if (!bare.contains(":")) {
            return bare;
        }
        try {
            byte[] bytes = InetAddress.getByName(bare).getAddress();
            return bytes.length == 4
                    ? InetAddress.getByAddress(bytes).getHostAddress()
                    : HexFormat.of().formatHex(Arrays.copyOf(bytes, NETWORK_BYTES));
        } catch (UnknownHostException e) {
            return bare; // not an address after all: as good a name as any
        }
    }
}
