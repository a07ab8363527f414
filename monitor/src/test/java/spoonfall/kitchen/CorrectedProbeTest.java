package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;
import spoonfall.probe.trace.TraceProbe;

final class CorrectedProbeTest {
    @Test
    void goodReadings_areMadeTrueAndSaidToBe() {
        Trace.Builder rows = new Trace.Builder();
        rows.add(0, OptionalDouble.of(95.25));
        Trace trace = rows.build(TraceInfo.titled("x"));
        Correction correction = new Correction(List.of(new Point(Reference.boilingWater(95.75, 0.4), 95.25, 0.02)));
        Hearing hearing = new Hearing();
        try (Probe probe = new CorrectedProbe(
                new TraceProbe("pan", "x.csv", trace, System::nanoTime), correction, "corrected by +0.50 °C")) {
            probe.start(hearing);
            Hearing.await("the end", hearing::ended);
        }
        assertThat(hearing.temperaturesC()).containsExactly(95.75);
        assertThat(hearing.readings().get(0).raw()).isEqualTo("95.25");
        assertThat(hearing.found().get(0)).contains("corrected by +0.50 °C");
    }
}
