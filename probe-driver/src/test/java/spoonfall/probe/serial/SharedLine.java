package spoonfall.probe.serial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Probes;

/** Several probes on one pseudo-terminal, with the instruments at its other end. */
public final class SharedLine implements AutoCloseable {
    private final Path folder;
    private final Path port;
    private final List<Probe> probes;
    private final List<Asked> asked = new CopyOnWriteArrayList<>();
    private volatile Instruments instruments;
    private volatile PseudoTerminal line = PseudoTerminal.open();

    /** What the instruments do when they hear a question. */
    public interface Instruments {
        /** Sends what is to be sent for {@code request}, the {@code n}th from 0 to its address, at once or later. */
        void hear(int n, byte[] request, PseudoTerminal line);
    }

    /**
     * A question that came.
     *
     * @param request its bytes, as one parcel
     * @param atNanos when it was heard
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Asked(byte[] request, long atNanos) {}

    /**
     * Plugs it in.
     *
     * @param specs by name, each with {@code %s} for the port, in the order in which they are opened
     * @param instruments what is at the other end
     */
    public SharedLine(Map<String, String> specs, Instruments instruments) {
        this.instruments = instruments;
        try {
            folder = Files.createTempDirectory("line");
            port = folder.resolve("port");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        link();
        List<NamedSpec> named = new ArrayList<>();
        specs.forEach((name, spec) -> named.add(new NamedSpec(name, ProbeSpec.parse(spec.formatted(port)))));
        probes = Probes.openAll(named, System::nanoTime);
        listen();
    }

    private void link() {
        try {
            Files.deleteIfExists(port);
            Files.createSymbolicLink(port, line.path());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void listen() {
        PseudoTerminal at = line;
        Thread thread = new Thread(
                () -> {
                    for (byte[] request = at.receive(); request.length > 0; request = at.receive()) {
                        int before = askedOf(request[0]);
                        asked.add(new Asked(request, System.nanoTime()));
                        instruments.hear(before, request, at);
                    }
                },
                "instruments");
        thread.setDaemon(true);
        thread.start();
    }

    /** The probe of that name. */
    public Probe probe(String name) {
        return probes.stream()
                .filter(probe -> probe.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** How often the instrument with that address was asked. */
    public int askedOf(int address) {
        return (int) asked.stream().filter(each -> each.request()[0] == address).count();
    }

    /** All questions so far. */
    public List<Asked> asked() {
        return asked;
    }

    /** Puts others at the other end from now on. */
    public void answer(Instruments others) {
        instruments = others;
    }

    /** Says something unasked. */
    public void send(byte[] bytes) {
        line.send(bytes);
    }

    /** Pulls the plug, and plugs it in again elsewhere: the port of the specs is a link. */
    public void replug() {
        PseudoTerminal before = line;
        line = PseudoTerminal.open();
        before.close();
        link();
        listen();
    }

    @Override
    public void close() {
        probes.forEach(Probe::close);
        line.close();
        try {
            Files.deleteIfExists(port);
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
