package spoonfall.web;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Tag;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntSupplier;
import java.util.function.ToDoubleFunction;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookStatus;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.probe.Quality;

/** What is counted of one pan, for Prometheus. */
final class Metrics implements KitchenListener {
    private final PrometheusMeterRegistry registry;
    private final String pan;
    private final AtomicReference<CookStatus> latest = new AtomicReference<>();

    /** The metrics of a pan, kept in a registry together with those of the others. */
    Metrics(PrometheusMeterRegistry registry, Kitchen kitchen) {
        this.registry = registry;
        this.pan = kitchen.plan().pan();
        KitchenCounts counts = kitchen.counts();
        for (String probe : counts.probes()) {
            for (Quality quality : Quality.values()) {
                counter(
                        "spoonfall.readings",
                        "readings heard",
                        counts,
                        c -> c.readings(probe, quality),
                        Tag.of("probe", probe),
                        Tag.of("quality", quality.wireName()));
            }
        }
        counter("spoonfall.readings.dropped", "readings dropped: too busy", counts, KitchenCounts::dropped);
        counter("spoonfall.gaps", "times the probe fell silent", counts, KitchenCounts::gaps);
        counter("spoonfall.probe.lost", "times the probe's device was lost", counts, KitchenCounts::losses);
        for (AlarmName name : AlarmName.values()) {
            counter(
                    "spoonfall.alarms.raised",
                    "alarms raised",
                    counts,
                    c -> c.raised(name),
                    Tag.of("alarm", name.wireName()));
        }
        Gauge.builder(
                        "spoonfall.temperature.celsius",
                        this,
                        m -> m.value(s -> s.temperatureC().orElse(Double.NaN)))
                .description("temperature of the pan")
                .tag("pan", pan)
                .register(registry);
        Gauge.builder(
                        "spoonfall.rate.celsius.per.minute",
                        this,
                        m -> m.value(s -> s.ratePerMinC().orElse(Double.NaN)))
                .description("climb of the pan")
                .tag("pan", pan)
                .register(registry);
    }

    /** A registry with nothing in it. */
    static PrometheusMeterRegistry registry() {
        return new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    }

    static void watchPages(PrometheusMeterRegistry registry, IntSupplier pages) {
        Gauge.builder("spoonfall.pages", pages, IntSupplier::getAsInt)
                .description("pages on the live channel")
                .strongReference(true) // nobody else keeps it: it would be gone with the next collection
                .register(registry);
    }

    static void countRequest(PrometheusMeterRegistry registry, double millis) {
        Timer requests =
                Timer.builder("spoonfall.http").description("HTTP requests").register(registry);
        requests.record(Duration.ofNanos((long) (millis * 1e6)));
    }

    @Override
    public void begin(KitchenState state) {
        pan(state.pan());
    }

    @Override
    public void changed(KitchenChange change) {
        // counted where it happens
    }

    @Override
    public void pan(PanView view) {
        view.status().ifPresent(latest::set);
    }

    private double value(ToDoubleFunction<CookStatus> of) {
        CookStatus status = latest.get();
        return status == null ? Double.NaN : of.applyAsDouble(status);
    }

    private void counter(
            String name, String what, KitchenCounts counts, ToDoubleFunction<KitchenCounts> of, Tag... tags) {
        FunctionCounter.builder(name, counts, of)
                .description(what)
                .tags(List.of(tags))
                .tag("pan", pan)
                .register(registry);
    }
}
