package spoonfall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.physics.Air;
import spoonfall.physics.Water;
import spoonfall.probe.trace.Trace;

final class LearntRateTest {
    @Test
    void theHobOfASimulatedCook_isFound() {
        // The lab's clean cook: 2.1 kg at 40 % on 1.35 kW net, at 1,240 m, by physics of its own
        // (sample-traces/clean.csv).
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        double pressurePa = Air.pressurePa(1240);
        double waterBoilC = Water.boilingPointC(pressurePa);
        List<LearntRate.Seen> climb = IntStream.range(0, trace.size())
                .filter(i -> i % 10 == 0)
                .mapToObj(i -> new LearntRate.Seen(
                        trace.elapsedS(i), trace.temperatureC(i).orElseThrow() - waterBoilC))
                .toList();
        double rate = LearntRate.kgPerMin(climb, pressurePa, 0.84).orElseThrow();
        assertThat(HobPower.learnt(rate).kW()).isCloseTo(1.35, within(0.2));
        List<LearntRate.Seen> half = climb.subList(0, climb.size() / 2);
        assertThat(LearntRate.kgPerMin(half, pressurePa, 0.84))
                .as("not thick enough yet")
                .isEmpty();
        assertThat(LearntRate.kgPerMin(List.of(), pressurePa, 0.84)).isEmpty();
    }

    @Test
    void thePlanOfACook_andWhatItShows_agree() {
        BatchPlan plan = BatchPlan.of(Batches.marmalade(), Batches.at(1240, Optional.of(HobPower.given(1.75))));
        List<LearntRate.Seen> climb = plan.path().stream()
                .map(point -> new LearntRate.Seen(
                        60 * point.minutes().orElseThrow(),
                        point.temperatureC() - plan.setup().waterBoilC()))
                .toList();
        double rate = LearntRate.kgPerMin(
                        climb, plan.setup().pressurePa(), plan.balance().solubleKg())
                .orElseThrow();
        assertThat(rate).isCloseTo(HobPower.given(1.75).waterKgPerMin(), within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"4, as planned", "3, as planned", "6, more than planned", "2, less than planned", "0, less than planned"
    })
    void theYield_isComparedWithWhatWasPlanned(int filled, String says) {
        assertThat(Yield.words(new Range(3.4, 3.8, 4.2), "half-pint jars", filled))
                .startsWith("You filled " + filled + "; 3.8 half-pint jars were planned (3.4 to 4.2).")
                .contains(says);
    }
}
