package spoonfall.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.ProbeTrust;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.probe.trace.Trace;

/** Cooks drawn at random that somebody reads by hand. */
final class ByHandTest {
    private static final long FIRST_SEED = 1_000_001;
    private static final int COOKS = 100;

    @Test
    void whoReadsByHand_typesMarksOfTheScaleEveryMinuteOrSo_theSameAgain() {
        Trace trace = VariedCook.cook(CookKind.CLEAN, 1);
        Trace typed = new ByHand(60, 0.5).look("1", trace);
        assertThat(typed.size()).isBetween((int) (trace.lastS() / 75), (int) (trace.lastS() / 50) + 2);
        for (int i = 0; i < typed.size() - 1; i++) {
            double twice = 2 * typed.temperatureC(i).orElseThrow();
            assertThat(twice).isEqualTo(Math.rint(twice));
        }
        assertThat(new ByHand(60, 0.5).look("1", trace).csv()).isEqualTo(typed.csv());
        assertThat(typed.info()).isEqualTo(trace.info());
    }

    @Test
    void whatNobodyDoes_isRefused() {
        assertThatThrownBy(() -> new ByHand(1, 1)).hasMessageContaining("every 1.0 s");
        assertThatThrownBy(() -> new ByHand(60, 0)).hasMessageContaining("marks");
    }

    /** The limits are what was measured, with room. */
    @ParameterizedTest
    @CsvSource({"60,1,90,260", "120,1,110,320", "60,0.5,60,190", "120,0.5,80,240"})
    void theGelPoint_isCalledWithinMinutes(double everyS, double stepC, double medianS, double ninetyS) {
        ByHand hand = new ByHand(everyS, stepC);
        List<Double> lateS = new ArrayList<>();
        int never = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + COOKS; seed++) {
            Trace trace = VariedCook.cook(CookKind.CLEAN, seed);
            Observed observed = Observed.of(hand.look(Long.toString(seed), trace), ProbeTrust.byHand("pan"));
            double gelT = trace.info().labels().stream()
                    .filter(label -> label.what().equals("gel"))
                    .findFirst()
                    .orElseThrow()
                    .t();
            observed.raised().stream()
                    .filter(call -> call.alarm().endsWith("gel-point"))
                    .findFirst()
                    .ifPresent(call -> lateS.add(call.t() - gelT));
            never += lateS.size() + never < seed - FIRST_SEED + 1 ? 1 : 0;
        }
        List<Double> off = lateS.stream().map(Math::abs).sorted().toList();
        List<Double> sorted = lateS.stream().sorted().toList();
        double median = off.get(off.size() / 2);
        double ninety = off.get(off.size() * 9 / 10);
        System.out.printf(
                "every %.0f s to %.1f °C, seeds %d to %d: gel point called %+.0f s from the truth (median), off by %.0f s"
                        + " (median), %.0f s (90 %%), never in %d%n",
                everyS,
                stepC,
                FIRST_SEED,
                FIRST_SEED + COOKS - 1,
                sorted.get(sorted.size() / 2),
                median,
                ninety,
                never);
        assertThat(median).isLessThan(medianS);
        assertThat(ninety).isLessThan(ninetyS);
    }
}
