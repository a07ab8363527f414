package spoonfall.lab.varied;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.lab.PanPhysics;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

final class VariedCookTest {
    @ParameterizedTest
    @EnumSource(CookKind.class)
    void theSameSeed_givesTheSameBytes(CookKind kind) {
        Trace once = VariedCook.cook(kind, 7);
        Trace again = VariedCook.cook(kind, 7);
        assertThat(again.csv()).isEqualTo(once.csv());
        assertThat(again.metadata("x.csv")).isEqualTo(once.metadata("x.csv"));
        assertThat(VariedCook.cook(kind, 8).csv()).isNotEqualTo(once.csv());
    }

    @ParameterizedTest
    @EnumSource(CookKind.class)
    void milestonesAndLabels_comeInOrder(CookKind kind) {
        for (long seed = 1; seed <= 12; seed++) {
            Trace trace = VariedCook.cook(kind, seed);
            List<TraceInfo.Label> labels = trace.info().labels();
            assertThat(labels).as("seed " + seed).isSortedAccordingTo((a, b) -> Double.compare(a.t(), b.t()));
            double[] milestones = List.of("boil", "window", "gel", "off-the-heat").stream()
                    .mapToDouble(name -> trace.info().firstT(name).orElseThrow())
                    .toArray();
            assertThat(milestones).as("seed " + seed).isSorted();
            assertThat(trace.info().provenance()).isEqualTo("simulated");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "STALL,stall",
        "SCORCH,scorch",
        "PROBE_OUT,probe-out",
        "STUCK,stuck",
        "SILENT,gap",
        "JUMP,jump",
        "SET_TESTS,test"
    })
    void aFault_beginsAndEndsInNearlyEveryCookOfItsKind(CookKind kind, String name) {
        long begun = LongStream.rangeClosed(1, 20)
                .mapToObj(seed -> VariedCook.cook(kind, seed).info())
                .filter(info -> info.firstT(name + "-begins").isPresent()
                        && info.firstT(name + "-ends").orElse(1e9)
                                > info.firstT(name + "-begins").getAsDouble())
                .count();
        assertThat(begun).isGreaterThanOrEqualTo(16);
    }

    @Test
    void aThird_isClean() {
        long clean = LongStream.rangeClosed(1, 90)
                .mapToObj(seed -> VariedCook.cook(seed).info())
                .filter(info -> info.labels().size() == 4)
                .count();
        assertThat(clean).isBetween(20L, 45L);
    }

    @Test
    void theGelLabel_isWhereTheReadingsAreAtTheStatedGelPoint() {
        int judged = 0;
        for (long seed = 1; seed <= 60; seed++) {
            Trace trace = VariedCook.cook(CookKind.CLEAN, seed);
            TraceInfo info = trace.info();
            double pressurePa = info.pressurePa()
                    .orElseGet(() -> PanPhysics.pressurePa(info.elevationM().orElseThrow()));
            double gelPointC =
                    PanPhysics.boilingPointC(pressurePa, 0) + info.riseC().orElseThrow();
            double gelT = info.firstT("gel").orElseThrow();
            double sum = 0;
            int count = 0;
            for (int i = 0; i < trace.size(); i++) {
                OptionalDouble reading = trace.temperatureC(i);
                if (Math.abs(trace.elapsedS(i) - gelT) <= 30 && reading.isPresent()) {
                    sum += reading.getAsDouble();
                    count++;
                }
            }
            if (count >= 10) {
                // Lag, a stir, a burner in its pause, the heat off: less than a degree, mostly downwards.
                assertThat(sum / count - gelPointC).as("seed " + seed).isBetween(-1.2, 0.4);
                judged++;
            }
        }
        assertThat(judged).isGreaterThan(40);
    }

    @Test
    void aSilentProbe_givesNoRowsAndAStuckOneOneValue() {
        Trace silent = VariedCook.cook(CookKind.SILENT, 3);
        assertThat(readingsBetween(silent, "gap-begins", "gap-ends")).isEmpty();
        Trace stuck = VariedCook.cook(CookKind.STUCK, 3);
        double[] same = readingsBetween(stuck, "stuck-begins", "stuck-ends");
        assertThat(same).hasSizeGreaterThan(5).containsOnly(same[0]);
    }

    @Test
    void aScorch_climbsFasterThanTheSamePanUnharmed() {
        Trace scorched = VariedCook.cook(CookKind.SCORCH, 5);
        Trace clean = VariedCook.cook(CookKind.CLEAN, 5);
        double fromT = scorched.info().firstT("scorch-begins").orElseThrow();
        double toT = scorched.info().firstT("scorch-ends").orElseThrow();
        assertThat(at(scorched, fromT - 20)).isEqualTo(at(clean, fromT - 20), Offset.offset(0.5));
        assertThat(at(scorched, toT - 20)).isGreaterThan(at(clean, toT - 20) + 1);
    }

    private static double[] readingsBetween(Trace trace, String begins, String ends) {
        double fromT = trace.info().firstT(begins).orElseThrow() + 0.2;
        double toT = trace.info().firstT(ends).orElseThrow() - 0.2;
        return LongStream.range(0, trace.size())
                .mapToInt(Math::toIntExact)
                .filter(i -> trace.elapsedS(i) > fromT && trace.elapsedS(i) < toT)
                .filter(i -> trace.temperatureC(i).isPresent())
                .mapToDouble(i -> trace.temperatureC(i).getAsDouble())
                .toArray();
    }

    private static double at(Trace trace, double t) {
        double last = Double.NaN;
        for (int i = 0; i < trace.size() && trace.elapsedS(i) <= t; i++) {
            last = trace.temperatureC(i).orElse(last);
        }
        return last;
    }
}
