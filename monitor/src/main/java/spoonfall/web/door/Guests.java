package spoonfall.web.door;

import io.javalin.websocket.WsContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.jetty.websocket.api.Callback;
import org.eclipse.jetty.websocket.api.Session;
import spoonfall.door.Device;
import spoonfall.door.DeviceBook;

/** The live channels of paired devices: when a device is revoked, they end at once. */
public final class Guests {
    /** Closes the live channel of a device that was shut out. */
    public static final int SHUT_OUT = 4403;

    private final DeviceBook devices;
    private final Map<Session, String> channels = new ConcurrentHashMap<>();

    /** The channels of the devices in a book. */
    public Guests(DeviceBook devices) {
        this.devices = devices;
        devices.listen(this::gone);
    }

    /** A channel was opened; it is one of a device's if its request was. */
    public void joined(WsContext ctx) {
        Device device = ctx.attribute(Door.DEVICE);
        if (device != null) {
            channels.put(ctx.session, device.id());
            boolean revokedMeanwhile = devices.all().stream().noneMatch(device::equals);
            if (revokedMeanwhile) {
                gone(device);
            }
        }
    }

    /** A channel was closed. */
    public void left(Session session) {
        channels.remove(session);
    }

    private void gone(Device device) {
        channels.forEach((session, id) -> {
            if (id.equals(device.id())) {
                session.close(SHUT_OUT, "this device was shut out", Callback.NOOP);
            }
        });
    }
}
