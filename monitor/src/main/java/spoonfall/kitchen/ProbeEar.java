package spoonfall.kitchen;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** Hears a probe, on the probe's thread, and hands what it says over to the kitchen's. */
final class ProbeEar implements ProbeListener {
    private static final Logger LOG = LoggerFactory.getLogger(ProbeEar.class);
    private static final long AGAIN_NANOS = TimeUnit.MILLISECONDS.toNanos(500);

    private final Thermometer thermometer;
    private final Thermometry thermometry;
    private final Pan pan;
    private final KitchenCounts counts;
    private final KitchenThread kitchen;
    private final Runnable whenEnded;
    private Quality latest = Quality.GOOD;
    private long latestNanos;

    /**
     * An ear for one probe.
     *
     * @param thermometer whom it hears
     * @param thermometry tells which thermometer was plugged in
     * @param pan what takes the readings, on the kitchen's thread
     * @param counts counts them
     * @param kitchen the thread that owns the pan
     * @param whenEnded done by it when a recording is over
     */
    ProbeEar(
            Thermometer thermometer,
            Thermometry thermometry,
            Pan pan,
            KitchenCounts counts,
            KitchenThread kitchen,
            Runnable whenEnded) {
        this.thermometer = thermometer;
        this.thermometry = thermometry;
        this.pan = pan;
        this.counts = counts;
        this.kitchen = kitchen;
        this.whenEnded = whenEnded;
    }

    @Override
    public void reading(Reading reading) {
        counts.countReading(thermometer.name(), reading.quality());
        long heardNanos = System.nanoTime();
        if (saysNothingNew(reading.quality(), heardNanos)) {
            return;
        }
        if (kitchen.isCurrent()) {
            pan.accept(thermometer, reading, heardNanos); // typed, by a task of the kitchen's own
            return;
        }
        if (!kitchen.offer(() -> pan.accept(thermometer, reading, heardNanos))) {
            counts.countDropped();
        }
    }

    /** Of a flood of what cannot be read, two a second say all that there is to know. */
    private boolean saysNothingNew(Quality quality, long heardNanos) {
        boolean again = quality != Quality.GOOD && quality == latest && heardNanos - latestNanos < AGAIN_NANOS;
        if (!again) {
            latest = quality;
            latestNanos = heardNanos;
        }
        return again;
    }

    @Override
    public void found(String name, String description, long atNanos) {
        LOG.info("{}: {}", name, description);
        Optional<String> identity = thermometry.identity().apply(thermometer.name());
        hand(() -> {
            identity.ifPresent(thermometer::identify);
            pan.becomes(thermometer, ProbeState.State.WAITING, description);
        });
    }

    @Override
    public void lost(String name, String trouble, long atNanos) {
        LOG.warn("{}: {}", name, trouble);
        counts.countLoss();
        hand(() -> pan.becomes(thermometer, ProbeState.State.LOST, trouble));
    }

    @Override
    public void ended(String name, long atNanos) {
        hand(() -> {
            pan.becomes(thermometer, ProbeState.State.ENDED, "The recording is over.");
            whenEnded.run();
        });
    }

    /** Waits for room: changes of the probe are few and none may be lost. */
    private void hand(Runnable task) {
        try {
            kitchen.put(task);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
