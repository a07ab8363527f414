package spoonfall.probe.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;

final class TraceProbeTest extends ProbeContract {
    private static Trace trace(List<Double> temperaturesC) {
        Trace.Builder rows = new Trace.Builder();
        for (int i = 0; i < temperaturesC.size(); i++) {
            rows.add(i * 0.02, OptionalDouble.of(temperaturesC.get(i)));
        }
        return rows.build(TraceInfo.titled("a climb"));
    }

    @Override
    protected Rig rig(List<Double> temperaturesC) {
        Probe probe = new TraceProbe("pan", "climb.csv", trace(temperaturesC), System::nanoTime);
        return new Rig() {
            @Override
            public Probe probe() {
                return probe;
            }

            @Override
            public void play(List<Double> temperatures) {
                // it plays by itself
            }

            @Override
            public void close() {
                probe.close();
            }
        };
    }

    @Test
    void readings_carryTheTraceTimesExactlyAndLostOnesAreLeftOut() {
        Trace.Builder rows = new Trace.Builder();
        rows.add(0, OptionalDouble.of(20));
        rows.add(1.5, OptionalDouble.empty());
        rows.add(2.25, OptionalDouble.of(21));
        Trace trace = rows.build(TraceInfo.titled("x"));
        Hearing hearing = new Hearing();
        long start = System.nanoTime();
        try (Probe probe = new TraceProbe("pan", "x.csv", trace, () -> start + 100 * (System.nanoTime() - start))) {
            probe.start(hearing);
            Hearing.await("the end", hearing::ended);
        }
        assertThat(hearing.temperaturesC()).containsExactly(20.0, 21.0);
        long apart =
                hearing.readings().get(1).atNanos() - hearing.readings().get(0).atNanos();
        assertThat(apart).isEqualTo(2_250_000_000L);
    }
}
