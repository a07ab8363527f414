package spoonfall.probe;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;

/** Remembers all that a probe says. */
public final class Hearing implements ProbeListener {
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private final List<Reading> readings = new CopyOnWriteArrayList<>();
    private final List<String> found = new CopyOnWriteArrayList<>();
    private final List<String> lost = new CopyOnWriteArrayList<>();
    private volatile boolean ended;

    @Override
    public void reading(Reading reading) {
        readings.add(reading);
    }

    @Override
    public void found(String probe, String description, long atNanos) {
        found.add(description);
    }

    @Override
    public void lost(String probe, String trouble, long atNanos) {
        lost.add(trouble);
    }

    @Override
    public void ended(String probe, long atNanos) {
        ended = true;
    }

    /** All readings so far. */
    public List<Reading> readings() {
        return readings;
    }

    /** The temperatures of the good ones. */
    public List<Double> temperaturesC() {
        return readings.stream()
                .filter(reading -> reading.quality() == Quality.GOOD)
                .map(reading -> reading.temperatureC().orElseThrow())
                .toList();
    }

    /** What was said of finding the device. */
    public List<String> found() {
        return found;
    }

    /** What was said of losing it. */
    public List<String> lost() {
        return lost;
    }

    /** Whether the probe said that it has no more. */
    public boolean ended() {
        return ended;
    }

    /** Waits until something is so; fails after twenty seconds. */
    public static void await(String what, BooleanSupplier condition) {
        long until = System.nanoTime() + LONGEST.toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > until) {
                throw new AssertionError("waited in vain for: " + what);
            }
            Thread.onSpinWait();
            try {
                Thread.sleep(5);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(e);
            }
        }
    }
}
