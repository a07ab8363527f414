package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.lab.Scenario;
import spoonfall.log.CookRecord;
import spoonfall.log.RecordedTrace;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;

final class KitchenTest {
    private static final double SPEED = 400;

    /** Remembers what it is told. */
    private static class Listener implements KitchenListener {
        final List<KitchenChange> changes = new CopyOnWriteArrayList<>();

        @Override
        public void begin(KitchenState state) {
            // only the changes are of interest
        }

        @Override
        public void changed(KitchenChange change) {
            changes.add(change);
        }

        @Override
        public void pan(PanView view) {
            // only the changes are of interest
        }
    }

    private static Kitchen kitchen(Trace trace) {
        KitchenPlan plan = new KitchenPlan(
                "Hollin Bank", "", Cooks.settings(trace), KitchenPlan.Source.REPLAY, SPEED, Optional.empty(), false);
        return new Kitchen(plan, clock -> List.of(new TraceProbe("pan", "a trace", trace, clock)), System::nanoTime);
    }

    private static void awaitTheEnd(Kitchen kitchen) {
        Hearing.await(
                "the end of the trace", () -> kitchen.state().join().probe().state() == ProbeState.State.ENDED);
    }

    @Test
    void whatAKitchenTold_isWhatAReplayOfItsRecordGives() throws ExecutionException, InterruptedException {
        Trace trace = Cooks.trace(Scenario.GAP, 1);
        Listener listener = new Listener();
        try (Kitchen kitchen = kitchen(trace)) {
            kitchen.listen(listener);
            kitchen.start();
            awaitTheEnd(kitchen);
            CookRecord record = kitchen.record().get();
            assertThat(record.size()).isEqualTo(trace.size());
            Trace recorded = RecordedTrace.of(record, Cooks.settings(trace), "", Optional.empty(), List.of());
            List<CookEvent> again = Cooks.events(recorded.with(trace.info())).stream()
                    .filter(event -> !(event instanceof CookEvent.StatusTaken))
                    .toList();
            double until = trace.lastS();
            List<CookEvent> told = listener.changes.stream()
                    .filter(change -> change instanceof KitchenChange.Cook)
                    .map(change -> ((KitchenChange.Cook) change).event())
                    .filter(event -> event.t() <= until)
                    .toList();
            assertThat(told).isEqualTo(again).isNotEmpty();
        }
    }

    @Test
    void aCookOnAMeasuredWaterBoil_replaysToTheSame() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        CookSettings measured = new CookSettings(WaterBoil.measured(95.7, 0.05), 4.4);
        CookRecord record = new CookRecord();
        for (int i = 0; i < trace.size(); i++) {
            record.add(trace.elapsedS(i), trace.temperatureC(i).orElseThrow());
        }
        Trace kept = RecordedTrace.of(record, measured, "", Optional.empty(), List.of());
        assertThat(kept.info().waterBoilC()).hasValue(95.7);
        assertThat(kept.info().pressurePa()).isEmpty();
        CookSettings again = new CookSettings(
                WaterBoil.measured(kept.info().waterBoilC().orElseThrow(), 0),
                kept.info().riseC().orElseThrow());
        assertThat(again.gelPointC()).isEqualTo(measured.gelPointC());
        assertThat(again.waterBoil().pressurePa())
                .isEqualTo(measured.waterBoil().pressurePa());
    }

    @Test
    void changes_areNumberedOneByOne() {
        Listener listener = new Listener();
        try (Kitchen kitchen = kitchen(Cooks.trace(Scenario.CLEAN, 1))) {
            kitchen.listen(listener);
            kitchen.start();
            awaitTheEnd(kitchen);
        }
        for (int i = 0; i < listener.changes.size(); i++) {
            assertThat(listener.changes.get(i).seq()).isEqualTo(i + 1);
        }
    }

    @Test
    void aListenerThatFails_troublesNobodyElse() {
        Listener listener = new Listener();
        try (Kitchen kitchen = kitchen(Cooks.trace(Scenario.CLEAN, 1))) {
            kitchen.listen(new Listener() {
                @Override
                public void changed(KitchenChange change) {
                    throw new IllegalStateException("told on purpose");
                }
            });
            kitchen.listen(listener);
            kitchen.start();
            awaitTheEnd(kitchen);
            assertThat(kitchen.healthy()).isTrue();
        }
        assertThat(listener.changes).isNotEmpty();
    }

    @Test
    void manyPagesAndPicturesOfALongCook_staySmall() throws ExecutionException, InterruptedException {
        try (Kitchen kitchen = kitchen(Cooks.trace(Scenario.DILUTE, 1))) {
            kitchen.start();
            awaitTheEnd(kitchen);
            assertThat(kitchen.state().get().climb()).hasSizeBetween(500, 1500);
        }
    }
}
