package spoonfall.probe.serial;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;

/**
 * A serial line with one or several instruments that speak only when asked. One thread asks them in turn, never two
 * at once: it opens the port when the first of the line's probes starts and frees it when the last one is closed.
 */
public final class AskingLine {
    /** So that a silent instrument costs the others hardly more than its own time, and closing does not wait. */
    private static final int READ_MILLIS = 100;

    /** So that a probe that starts while the line rests is not kept waiting. */
    private static final long LONGEST_REST_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    private final SerialSettings settings;
    private final LongSupplier nanoClock;
    private final List<AskingProbe> probes;
    private @Nullable SerialPlug plug;

    /**
     * A probe and what it asks.
     *
     * @param probe its name, as the kitchen calls it
     * @param question what its instrument is asked
     */
    public record Asked(String probe, Question question) {}

    private AskingLine(SerialSettings settings, List<Asked> asked, LongSupplier nanoClock) {
        this.settings = settings;
        this.nanoClock = nanoClock;
        boolean alone = asked.size() == 1;
        probes = asked.stream()
                .map(each -> new AskingProbe(this, each.probe(), each.question(), new Pace(alone)))
                .toList();
    }

    /**
     * The probes of a line, not started, in the order of {@code asked}.
     *
     * @param settings how to open the port
     * @param asked who is on it
     * @param nanoClock the monotonic clock that stamps readings
     */
    public static List<Probe> open(SerialSettings settings, List<Asked> asked, LongSupplier nanoClock) {
        return List.copyOf(new AskingLine(settings, asked, nanoClock).probes);
    }

    SerialSettings settings() {
        return settings;
    }

    long nowNanos() {
        return nanoClock.getAsLong();
    }

    /** Makes sure that the line's thread runs, for a probe that has begun and was not closed at the same time. */
    synchronized void join() {
        if (plug == null && probes.stream().anyMatch(AskingProbe::active)) {
            String names = probes.stream().map(AskingProbe::name).collect(Collectors.joining("+"));
            SerialPlug fresh = new SerialPlug(names, settings, READ_MILLIS);
            plug = fresh;
            fresh.start(link -> converse(fresh, link), what -> probes.forEach(probe -> probe.lose(what)));
        }
    }

    /** Ends the line's thread if none of the probes goes on. */
    void leave() {
        SerialPlug ending;
        synchronized (this) {
            if (plug == null || probes.stream().anyMatch(AskingProbe::active)) {
                return;
            }
            ending = plug;
            plug = null;
        }
        ending.close(); // outside, for the thread it waits for may be about to leave as well
    }

    private void converse(SerialPlug open, SerialLink link) throws IOException {
        long openedNanos = System.nanoTime();
        probes.forEach(probe -> probe.lineOpened(openedNanos));
        while (!open.closing()) {
            long nowNanos = System.nanoTime();
            Optional<AskingProbe> next = probes.stream()
                    .filter(AskingProbe::active)
                    .min(Comparator.comparingLong(probe -> probe.pace().waitNanos(nowNanos)));
            long restNanos = next.map(probe -> probe.pace().waitNanos(nowNanos)).orElse(LONGEST_REST_NANOS);
            if (next.isPresent() && restNanos <= 0) {
                turn(open, link, next.get());
            } else {
                open.pause(1 + TimeUnit.NANOSECONDS.toMillis(Math.min(restNanos, LONGEST_REST_NANOS)));
            }
        }
    }

    private void turn(SerialPlug open, SerialLink link, AskingProbe probe) throws IOException {
        long askedNanos = System.nanoTime();
        Question.Outcome outcome = probe.question().ask(link, () -> open.closing() || !probe.active());
        if (outcome.waitedOut()) {
            probe.pace().silent(askedNanos);
        } else {
            probe.pace().answered(askedNanos);
        }
        if (outcome.waitedOut() || !probe.active()) {
            holdInstrument(probe.question().instrument());
        }
        probe.hear(outcome);
    }

    /**
     * An answer does not say which of its registers an instrument was asked for: one that comes late would be taken
     * for the answer to the next question to the same instrument. Another instrument's address tells it apart.
     */
    private void holdInstrument(int instrument) {
        long untilNanos = System.nanoTime() + Pace.LATE_NANOS;
        probes.stream()
                .filter(probe -> probe.question().instrument() == instrument)
                .forEach(probe -> probe.pace().hold(untilNanos));
    }
}
