package spoonfall.door;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * The devices that were let in, in one file. What another program changes in it counts from the next {@link #refresh}. Thread-safe.
 */
public final class DeviceBook {
    /** How many there can be. */
    public static final int MOST = 50;

    private final DeviceFile file;
    private final Secrets secrets = new Secrets();
    private final List<Consumer<Device>> listeners = new CopyOnWriteArrayList<>();
    private final Queue<Device> gone = new ConcurrentLinkedQueue<>();

    /** The ids of those whose end could not be written down: a later look at the file must not let them in. */
    private final Set<String> unwrittenEnds = new HashSet<>();

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
        return new DeviceBook(file, read(file));
    }

    private static List<Device> read(DeviceFile file) {
        try {
            return file.read();
        } catch (IOException e) {
            throw new UncheckedIOException(e.getMessage(), e);
        }
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
    public Paired add(String name, Role role, Instant now) {
        return letIn(Optional.empty(), name, role, now);
    }

    /**
     * Lets a device in anew, in the place of what it was, and tells the listeners of that.
     *
     * @param before what it was
     * @param name as {@link Device#checkedName} allows
     * @throws IllegalArgumentException if its name cannot be, or there are too many devices
     * @throws UncheckedIOException if it cannot be written down; it is what it was then
     */
    public Paired replace(Device before, String name, Role role, Instant now) {
        return letIn(Optional.of(before.id()), name, role, now);
    }

    private Paired letIn(Optional<String> replaced, String name, Role role, Instant now) {
        String token = secrets.token();
        Device device = new Device(secrets.id(), name, role, Secrets.hash(token), now);
        try {
            change(there -> {
                List<Device> next =
                        new ArrayList<>(replaced.map(id -> without(there, id)).orElse(there));
                if (next.size() >= MOST) {
                    throw new IllegalArgumentException("there are " + MOST + " devices; revoke one first");
                }
                next.add(device);
                return List.copyOf(next);
            });
        } finally {
            tellOfGone();
        }
        return new Paired(device, token);
    }

    /**
     * Takes a device's token from it, and tells the listeners.
     *
     * @return the device; empty if there is none of that id
     * @throws UncheckedIOException if that cannot be written down; it is shut out until the service stops all the same
     */
    public Optional<Device> revoke(String id) {
        try {
            return shutOut(id);
        } finally {
            tellOfGone();
        }
    }

    private synchronized Optional<Device> shutOut(String id) {
        List<Device> found = new ArrayList<>(named(devices, id));
        try {
            change(there -> {
                found.addAll(named(there, id));
                return without(there, id);
            });
        } catch (UncheckedIOException e) {
            if (found.isEmpty()) {
                return Optional.empty();
            }
            unwrittenEnds.add(id);
            count(devices);
            throw e;
        }
        return found.stream().findFirst();
    }

    private static List<Device> named(List<Device> devices, String id) {
        return devices.stream().filter(device -> device.id().equals(id)).toList();
    }

    private static List<Device> without(List<Device> devices, String id) {
        return devices.stream().filter(device -> !device.id().equals(id)).toList();
    }

    /**
     * Looks whether the file was changed by another program, and tells the listeners of devices that are no longer in it.
     *
     * @throws UncheckedIOException if it cannot be read; the next look tries it again
     */
    public void refresh() {
        synchronized (this) {
            if (!file.changed()) {
                return;
            }
            count(read(file));
        }
        tellOfGone();
    }

    /** Another program may have changed the file since the last look: what it says now is changed, not what we remember. */
    private synchronized void change(UnaryOperator<List<Device>> change) {
        try {
            count(file.change(there -> {
                count(there);
                return change.apply(devices);
            }));
        } catch (IOException e) {
            throw new UncheckedIOException("the devices cannot be written down: " + e.getMessage(), e);
        }
    }

    /** These are let in from now on; the listeners are told of the others when nobody waits for us. */
    private void count(List<Device> now) {
        List<Device> next = now.stream()
                .filter(device -> !unwrittenEnds.contains(device.id()))
                .toList();
        devices.stream().filter(device -> !next.contains(device)).forEach(gone::add);
        devices = next;
    }

    private void tellOfGone() {
        for (Device device = gone.poll(); device != null; device = gone.poll()) {
            for (Consumer<Device> listener : listeners) {
                listener.accept(device);
            }
        }
    }

    /** Tells of each device that is shut out from now on. */
    public void listen(Consumer<Device> listener) {
        listeners.add(listener);
    }
}
