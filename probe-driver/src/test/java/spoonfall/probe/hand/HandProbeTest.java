package spoonfall.probe.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.Quality;

/** What somebody types of a thermometer. */
final class HandProbeTest extends ProbeContract {
    @Override
    protected Rig rig(List<Double> temperaturesC) {
        HandProbe probe = new HandProbe("pan", System::nanoTime);
        return new Rig() {
            @Override
            public Probe probe() {
                return probe;
            }

            @Override
            public void play(List<Double> typedC) {
                typedC.forEach(value -> Hearing.await(
                        "taking it",
                        () -> probe.type(value, Double.toString(value)).isPresent()));
            }

            @Override
            public void close() {
                probe.close();
            }
        };
    }

    @Test
    void type_isHeardByNobody_beforeTheProbeIsStartedAndAfterItIsClosed() {
        HandProbe probe = new HandProbe("pan", System::nanoTime);
        assertThat(probe.type(100.4, "100.4")).isEmpty();
        probe.close();
        assertThat(probe.type(100.4, "100.4")).isEmpty();
    }

    @Test
    void type_countsATemperatureThatNoThermometerShowsAsBad() {
        Hearing hearing = new Hearing();
        try (HandProbe probe = new HandProbe("pan", System::nanoTime)) {
            probe.start(hearing);
            Hearing.await("taking it", () -> probe.type(1004, "1004").isPresent());
            assertThat(hearing.readings().get(0).quality()).isEqualTo(Quality.OUT_OF_RANGE);
        }
    }
}
