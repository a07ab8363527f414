package spoonfall.web.live;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;

/** What the live channel has counted. */
final class LiveCounts {
    private final Timer latency;
    private final Counter replaced;
    private final Counter cut;

    LiveCounts(MeterRegistry registry) {
        latency = Timer.builder("spoonfall.wire.to.page")
                .description("from a reading's last byte to its status being sent to a page")
                .publishPercentiles(0.5, 0.99)
                .register(registry);
        replaced = Counter.builder("spoonfall.live.replaced")
                .description("statuses that a slow page never saw because a newer one came")
                .register(registry);
        cut = Counter.builder("spoonfall.live.cut")
                .description("pages cut off because they took too long")
                .register(registry);
    }

    void countSent(long heardNanos) {
        latency.record(Duration.ofNanos(Math.max(0, System.nanoTime() - heardNanos)));
    }

    void countReplaced() {
        replaced.increment();
    }

    void countCut() {
        cut.increment();
    }
}
