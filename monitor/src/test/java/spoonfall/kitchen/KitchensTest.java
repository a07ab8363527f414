package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.canner.CannerListener;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.probe.Hearing;
import spoonfall.probe.Reading;

final class KitchensTest {
    private static final CookSettings HOLLIN_BANK = new CookSettings(WaterBoil.atElevation(1240), 4.4);

    private final ToldProbe big = new ToldProbe("big", 0.02);
    private final ToldProbe small = new ToldProbe("small", 0.02);
    private final ToldProbe inCanner = new ToldProbe("canner", 0);
    private final AtomicLong canNanos = new AtomicLong();
    private final Canner canner = new Canner(clock -> inCanner, canNanos::get, Thermometry.none());
    private final Kitchens kitchens =
            new Kitchens(List.of(kitchen("big", big), kitchen("small", small)), Optional.of(canner));

    @AfterEach
    void stop() {
        kitchens.close();
    }

    private static Kitchen kitchen(String pan, ToldProbe probe) {
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", HOLLIN_BANK, 1).inPan(pan);
        return new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    }

    private OptionalDouble temperatureC(String pan) {
        KitchenState state = kitchens.named(pan).orElseThrow().state().join();
        return state.pan()
                .status()
                .map(status -> status.seen().map(seen -> OptionalDouble.of(seen.temperatureC())))
                .flatMap(seen -> seen)
                .orElse(OptionalDouble.empty());
    }

    @Test
    void everyPan_followsItsOwnProbe() {
        kitchens.start();
        big.say(80, 20);
        small.say(60, 20);
        Hearing.await(
                "both",
                () -> temperatureC("big").isPresent() && temperatureC("small").isPresent());
        assertThat(temperatureC("big").orElseThrow()).isBetween(79.9, 80.1);
        assertThat(temperatureC("small").orElseThrow()).isBetween(59.9, 60.1);
        assertThat(kitchens.names()).containsExactly("big", "small");
        assertThat(kitchens.first().plan().pan()).isEqualTo("big");
        assertThat(kitchens.named("middle")).isEmpty();
    }

    @Test
    void theCannersReadings_reachItsListenersAndNoPan() {
        List<Reading> heard = new CopyOnWriteArrayList<>();
        List<String> troubles = new CopyOnWriteArrayList<>();
        canner.listen(new CannerListener() {
            @Override
            public void reading(Reading reading) {
                heard.add(reading);
            }

            @Override
            public void lost(String trouble) {
                troubles.add(trouble);
            }
        });
        kitchens.start();
        inCanner.say(95.9, 3);
        assertThat(heard).hasSize(3);
        assertThat(canner.seen().temperatureC()).hasValue(95.9);
        assertThat(canner.seen().state()).isEqualTo(ProbeState.State.READING);
        assertThat(temperatureC("big")).isEmpty();

        canNanos.addAndGet(11_000_000_000L);
        assertThat(canner.seen().temperatureC()).isEmpty();
        assertThat(canner.seen().state()).isEqualTo(ProbeState.State.SILENT);

        inCanner.lose();
        assertThat(canner.seen().state()).isEqualTo(ProbeState.State.LOST);
        assertThat(troubles).containsExactly("canner was unplugged");
    }

    @Test
    void twoPansOfOneName_areRefused() {
        assertThatThrownBy(() -> new Kitchens(
                        List.of(kitchen("big", new ToldProbe("a", 0)), kitchen("big", new ToldProbe("b", 0))),
                        Optional.empty()))
                .hasMessage("two pans are called big; give each a name of its own");
    }

    @Test
    void noPanAtAll_isRefused() {
        assertThatThrownBy(() -> new Kitchens(List.of(), Optional.empty()))
                .hasMessage("a kitchen has at least one pan");
    }
}
