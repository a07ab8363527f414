package spoonfall.web.door;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.InetAddress;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import spoonfall.door.Device;
import spoonfall.door.LanAddresses;
import spoonfall.door.PairingCode;
import spoonfall.door.PairingDesk;
import spoonfall.door.QrPicture;
import spoonfall.door.Role;

/** The door as JSON. */
final class DoorViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final PairingDesk desk;
    private final IntSupplier port;

    /**
     * Views.
     *
     * @param port the port that the network sees
     */
    DoorViews(PairingDesk desk, IntSupplier port) {
        this.desk = desk;
        this.port = port;
    }

    /** What a device is told of itself. */
    static ObjectNode outside(Device device) {
        return NODES.objectNode()
                .put("here", false)
                .put("name", device.name())
                .put("role", device.role().wireName());
    }

    /** What this machine's own page is told: where devices find it, the code, and who was let in. */
    ObjectNode here(Optional<NetworkDoor> network, long nowMillis) {
        ObjectNode node = NODES.objectNode().put("here", true).put("role", Role.COOK.wireName());
        ArrayNode devices = NODES.arrayNode();
        node.putNull("network").putNull("code").set("devices", devices);
        network.ifPresent(door -> {
            List<String> addresses = addresses(door);
            ObjectNode served =
                    node.putObject("network").put("secure", door.tls().isPresent());
            door.tls()
                    .ifPresentOrElse(
                            key -> served.put("fingerprint", key.fingerprint()), () -> served.putNull("fingerprint"));
            addresses.forEach(served.putArray("addresses")::add);
            node.set("code", code(addresses, nowMillis));
            door.devices().all().forEach(device -> devices.add(device(device)));
        });
        return node;
    }

    private ObjectNode code(List<String> addresses, long nowMillis) {
        ObjectNode node = NODES.objectNode().put("state", desk.state(nowMillis).wireName());
        desk.current(nowMillis).ifPresent(code -> {
            node.put("code", code.shown()).put("role", code.role().wireName()).put("leftS", code.leftS(nowMillis));
            addresses.stream().findFirst().ifPresent(address -> picture(node, address, code));
        });
        return node;
    }

    /** The address goes into the picture with the code behind a hash, which browsers keep to themselves. */
    private static void picture(ObjectNode node, String address, PairingCode code) {
        String url = address + "/pair.html#" + code.text();
        QrPicture picture = QrPicture.of(url);
        node.put("url", url);
        node.putObject("qr").put("size", picture.size()).put("path", picture.svgPath());
    }

    /** Where devices find the page: by the machine's addresses, then by the names that were given. */
    private List<String> addresses(NetworkDoor door) {
        String before = door.scheme() + "://";
        String behind = ":" + port.getAsInt();
        return Stream.concat(
                        LanAddresses.find().stream().map(InetAddress::getHostAddress),
                        door.names().names().stream().sorted())
                .map(host -> before + host + behind)
                .toList();
    }

    private static ObjectNode device(Device device) {
        return NODES.objectNode()
                .put("id", device.id())
                .put("name", device.name())
                .put("role", device.role().wireName())
                .put("pairedAtMs", device.pairedAt().toEpochMilli());
    }
}
