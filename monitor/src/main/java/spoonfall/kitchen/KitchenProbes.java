package spoonfall.kitchen;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.hand.HandProbe;

/** The probes of a kitchen, opened and closed together; recordings that repeat are opened anew a while after they are over. */
final class KitchenProbes {
    private static final long REPEAT_AFTER_NANOS = TimeUnit.SECONDS.toNanos(12);

    private final Supplier<List<Probe>> opener;
    private List<Probe> probes;
    private long repeatAtNanos = Long.MAX_VALUE;

    /** Probes that are open and say nothing yet. */
    KitchenProbes(Supplier<List<Probe>> opener) {
        this.opener = opener;
        probes = opener.get();
    }

    /** All of them; the cook follows the first. */
    List<Probe> all() {
        return probes;
    }

    /** Has each of them heard by an ear of its own. */
    void start(Function<Probe, ProbeListener> ears) {
        probes.forEach(probe -> probe.start(ears.apply(probe)));
    }

    /** The recording is over, and begins again a while later. */
    void repeatLater() {
        repeatAtNanos = System.nanoTime() + REPEAT_AFTER_NANOS;
    }

    /** Whether that while is over; said once. */
    boolean repeatDue() {
        boolean due = repeatAtNanos != Long.MAX_VALUE && System.nanoTime() - repeatAtNanos >= 0;
        if (due) {
            repeatAtNanos = Long.MAX_VALUE;
        }
        return due;
    }

    /** Opens them anew. */
    void reopen() {
        probes = opener.get();
    }

    /** The thermometer that somebody reads and that is called {@code name}. */
    Optional<HandProbe> byHand(String name) {
        return probes.stream()
                .filter(probe -> probe.name().equals(name))
                .flatMap(probe -> probe instanceof HandProbe hand ? Stream.of(hand) : Stream.empty())
                .findFirst();
    }

    /** Frees them. */
    void close() {
        probes.forEach(Probe::close);
    }
}
