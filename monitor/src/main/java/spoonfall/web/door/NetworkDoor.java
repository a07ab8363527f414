package spoonfall.web.door;

import java.util.Optional;
import spoonfall.door.DeviceBook;
import spoonfall.door.HostNames;
import spoonfall.door.tls.ServerKey;

/**
 * How pages from the network are let in, at a port of their own.
 *
 * @param port the port, 0 for any free one
 * @param tls by what they are served; empty for plain HTTP, which everybody in the network can read
 * @param names the host names that they may ask by
 * @param devices those that were paired
 */
public record NetworkDoor(int port, Optional<ServerKey> tls, HostNames names, DeviceBook devices) {
    /** What an address of this door begins with. */
    String scheme() {
        return tls.isPresent() ? "https" : "http";
    }
}
