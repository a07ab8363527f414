package spoonfall.door;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * The devices that were let in, in one file. What another program changes in it counts from the next {@link #refresh}. Thread-safe.
 */
public final class DeviceBook {
    /** How many there can be. */
    public static final int MOST = 50;

    private final DeviceFile file;
    private final Secrets secrets = new Secrets();
    private final List<Consumer<Device>> listeners = new CopyOnWriteArrayList<>();
    private List<Device> devices;

    /** A device that was just let in, and its token, which is told once. */
    public record Paired(Device device, String token) {
        /** Without the token, which must not get into a log. */
        @Override
        public String toString() {
            return device.id();
        }
    }

    private DeviceBook(DeviceFile file, List<Device> devices) {
        this.file = file;
        this.devices = devices;
    }

    /**
     * The devices in a file, which need not be there yet. One that cannot be understood is set aside beside it, and nobody is let in.
     *
     * @throws UncheckedIOException if it is there and cannot be read
     */
    public static DeviceBook open(Path path) {
        DeviceFile file = new DeviceFile(path);
        return new DeviceBook(file, file.read());
    }

    /** All of them, in the order in which they came. */
    public synchronized List<Device> all() {
        return List.copyOf(devices);
    }

    /** Whose token that is. */
    public synchronized Optional<Device> withToken(String token) {
        String hash = Secrets.hash(token);
        Device found = null;
        for (Device device : devices) {
            if (Secrets.same(device.tokenHash(), hash)) {
                found = device;
            }
        }
        return Optional.ofNullable(found);
    }

    /**
     * Lets a device in.
     *
     * @param name as {@link Device#checkedName} allows
     * @throws IllegalArgumentException if its name cannot be, or there are too many devices
     * @throws UncheckedIOException if it cannot be written down; it is not let in then
     */
    public synchronized Paired add(String name, Role role, Instant now) {
        if (devices.size() >= MOST) {
            throw new IllegalArgumentException("there are " + MOST + " devices; revoke one first");
        }
        String token = secrets.token();
        Device device = new Device(secrets.id(), name, role, Secrets.hash(token), now);
        List<Device> next = new ArrayList<>(devices);
        next.add(device);
        write(next);
        return new Paired(device, token);
    }

    /**
     * Takes a device's token from it, and tells the listeners.
     *
     * @return the device; empty if there is none of that id
     * @throws UncheckedIOException if that cannot be written down; it is shut out until the service stops all the same
     */
    public Optional<Device> revoke(String id) {
        Optional<Device> gone = shutOut(id);
        gone.ifPresent(device -> {
            tell(device);
            write(all());
        });
        return gone;
    }

    private synchronized Optional<Device> shutOut(String id) {
        Optional<Device> gone =
                devices.stream().filter(device -> device.id().equals(id)).findFirst();
        gone.ifPresent(device -> devices =
                devices.stream().filter(other -> !other.id().equals(id)).toList());
        return gone;
    }

    private void tell(Device gone) {
        listeners.forEach(listener -> listener.accept(gone));
    }

    /** Looks whether the file was changed by another program, and tells the listeners of devices that are no longer in it. */
    public void refresh() {
        List<Device> gone;
        synchronized (this) {
            if (!file.changed()) {
                return;
            }
            List<Device> now = file.read();
            gone = devices.stream().filter(device -> !now.contains(device)).toList();
            devices = now;
        }
        gone.forEach(this::tell);
    }

    /** Tells of each device that is shut out from now on. */
    public void listen(Consumer<Device> listener) {
        listeners.add(listener);
    }

    private synchronized void write(List<Device> next) {
        try {
            file.write(next);
        } catch (IOException e) {
            throw new UncheckedIOException("the devices cannot be written down: " + e.getMessage(), e);
        }
        devices = next;
    }
}
