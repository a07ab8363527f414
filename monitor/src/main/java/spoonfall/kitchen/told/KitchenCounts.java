package spoonfall.kitchen.told;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import spoonfall.cook.AlarmName;
import spoonfall.probe.Quality;

/** What the kitchen has counted since the service started; readable from any thread. */
public final class KitchenCounts {
    private final Map<String, Map<Quality, AtomicLong>> readings = new LinkedHashMap<>();
    private final AtomicLong dropped = new AtomicLong();
    private final AtomicLong gaps = new AtomicLong();
    private final AtomicLong losses = new AtomicLong();
    private final Map<AlarmName, AtomicLong> raised = new EnumMap<>(AlarmName.class);

    /** Nothing was heard yet of those probes. */
    public KitchenCounts(List<String> probes) {
        for (String probe : probes) {
            Map<Quality, AtomicLong> counts = new EnumMap<>(Quality.class);
            for (Quality quality : Quality.values()) {
                counts.put(quality, new AtomicLong());
            }
            readings.put(probe, counts);
        }
        for (AlarmName name : AlarmName.values()) {
            raised.put(name, new AtomicLong());
        }
    }

    /** The names of the probes. */
    public Set<String> probes() {
        return readings.keySet();
    }

    /** Readings heard of a probe, of a quality that a driver gives. */
    public long readings(String probe, Quality quality) {
        AtomicLong count = readings.getOrDefault(probe, Map.of()).get(quality);
        return count == null ? 0 : count.get();
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

    /** A reading was heard of a probe. */
    public void countReading(String probe, Quality quality) {
        AtomicLong count = readings.getOrDefault(probe, Map.of()).get(quality);
        if (count != null) {
            count.incrementAndGet();
        }
    }

    /** A reading was dropped. */
    public void countDropped() {
        dropped.incrementAndGet();
    }

    /** A probe's device was lost. */
    public void countLoss() {
        losses.incrementAndGet();
    }

    /** An alarm was raised. */
    public void countRaised(AlarmName name) {
        AtomicLong count = raised.get(name);
        if (count != null) {
            count.incrementAndGet();
        }
        if (name == AlarmName.PROBE_SILENT) {
            gaps.incrementAndGet();
        }
    }
}
