package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.lab.Scenario;
import spoonfall.log.CookInput;
import spoonfall.log.memory.BatchMemory;
import spoonfall.probe.trace.Trace;

/** A target that a cook took, and a pan that goes on with an earlier cook. */
@Timeout(60)
final class TargetTest {
    private final KeptJournal journal = new KeptJournal();
    private final Trace trace = Cooks.trace(Scenario.CLEAN, 3);

    private Kitchen kitchen(ToldProbe pan) {
        Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
                clock -> List.of(pan),
                System::nanoTime,
                Thermometry.none(),
                journal);
        kitchen.start();
        return kitchen;
    }

    private static double riseC(Kitchen kitchen) {
        return kitchen.state().join().pan().basis().settings().riseC();
    }

    private void play(ToldProbe pan, int from, int until) {
        for (int i = from; i < until; i++) {
            pan.say(trace.temperatureC(i).orElseThrow(), 1);
        }
    }

    @Test
    void aTargetThatWasTaken_countsForThisCookAndTheNext_andSurvivesAKill() {
        ToldProbe pan = new ToldProbe("pan", 0);
        try (Kitchen first = kitchen(pan)) {
            play(pan, 0, 300);
            first.state().join();
            first.targets().take(5.0).join();
            first.targets().recooks(12).join();
            assertThat(riseC(first)).isCloseTo(5.0, within(1e-9));
            assertThat(journal.inputs)
                    .filteredOn(input ->
                            input instanceof CookInput.Word word && word.kind().equals(BatchMemory.RECOOK))
                    .hasSize(1);
            assertThatThrownBy(() -> first.targets().take(6.2))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("3.3 to 6.1");
        }
        try (Kitchen second = kitchen(new ToldProbe("pan", 0))) {
            assertThat(riseC(second)).isCloseTo(5.0, within(1e-9));
            second.newCook(Optional.empty()).join();
            assertThat(riseC(second)).isCloseTo(5.0, within(1e-9));
        }
    }

    @Test
    void withoutACook_nothingGoesOn() {
        try (Kitchen kitchen = kitchen(new ToldProbe("pan", 0))) {
            assertThatThrownBy(() -> kitchen.targets().recooks(12).join())
                    .hasMessageContaining("put the thermometer into the pan first");
        }
    }
}
