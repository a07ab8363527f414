package spoonfall.kitchen;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import spoonfall.cook.AlarmName;

/** What the kitchen has counted since the service started; readable from any thread. */
public final class KitchenCounts {
    private final AtomicLong good = new AtomicLong();
    private final AtomicLong bad = new AtomicLong();
    private final AtomicLong dropped = new AtomicLong();
    private final AtomicLong gaps = new AtomicLong();
    private final AtomicLong losses = new AtomicLong();
    private final Map<AlarmName, AtomicLong> raised = new EnumMap<>(AlarmName.class);

    KitchenCounts() {
        for (AlarmName name : AlarmName.values()) {
            raised.put(name, new AtomicLong());
        }
    }

    /** Good readings taken. */
    public long good() {
        return good.get();
    }

    /** Bad readings heard. */
    public long bad() {
        return bad.get();
    }

    /** Readings dropped because the kitchen was too busy to take them. */
    public long dropped() {
        return dropped.get();
    }

    /** How often the probe fell silent. */
    public long gaps() {
        return gaps.get();
    }

    /** How often the probe's device was lost. */
    public long losses() {
        return losses.get();
    }

    /** How often an alarm was raised. */
    public long raised(AlarmName name) {
        AtomicLong count = raised.get(name);
        return count == null ? 0 : count.get();
    }

    void countReading(boolean isGood) {
        (isGood ? good : bad).incrementAndGet();
    }

    void countDropped() {
        dropped.incrementAndGet();
    }

    void countLoss() {
        losses.incrementAndGet();
    }

    void countRaised(AlarmName name) {
        AtomicLong count = raised.get(name);
        if (count != null) {
            count.incrementAndGet();
        }
        if (name == AlarmName.PROBE_SILENT) {
            gaps.incrementAndGet();
        }
    }
}
